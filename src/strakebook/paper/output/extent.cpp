#include "strakebook/paper/output/extent.h"

#include <algorithm>

namespace strakebook::output {

namespace {

using base::Point;
using base::Pt;
using base::Rect;

constexpr double below_baseline = 1.0 / 3;

Rect box(Point a, Point b) {
  const Point low{std::min(a.x, b.x), std::min(a.y, b.y)}, high{std::max(a.x, b.x), std::max(a.y, b.y)};
  return {low, {high.x - low.x, high.y - low.y}};
}

struct Extent {
  Rect operator()(const page::Run &run) const {
    Pt length;
    for (const auto &glyph : run.glyphs)
      length += glyph.advance;
    const Pt up = run.size, down = run.size * below_baseline;
    const Point at = run.origin;
    return run.upright ? box({at.x, at.y - up}, {at.x + length, at.y + down})
                       : box({at.x - up, at.y}, {at.x + down, at.y - length});
  }
  Rect operator()(const page::Path &path) const {
    Rect all = std::visit(*this, path.steps.front()); // a path that draws begins with a move
    for (const auto &step : path.steps)
      if (!std::holds_alternative<page::Close>(step))
        all = united(all, std::visit(*this, step));
    return all;
  }
  Rect operator()(const page::Picture &picture) const { return picture.box; }
  Rect operator()(const page::Anchor &anchor) const { return {anchor.at, {}}; }
  Rect operator()(const page::Link &link) const { return link.box; }
  Rect operator()(const page::Move &step) const { return {step.to, {}}; }
  Rect operator()(const page::Line &step) const { return {step.to, {}}; }
  Rect operator()(const page::Curve &step) const { return united(box(step.c1, step.c2), {step.to, {}}); }
  Rect operator()(const page::Close &) const { return {}; }
};

} // namespace

Rect extent_of(const page::Item &item) { return std::visit(Extent{}, item.what); }

Rect united(const Rect &a, const Rect &b) {
  const Point low{std::min(a.at.x, b.at.x), std::min(a.at.y, b.at.y)};
  return box(low, {std::max(a.right(), b.right()), std::max(a.bottom(), b.bottom())});
}

} // namespace strakebook::output
