#include "strakebook/paper/typeset/drawing_turn.h"

namespace strakebook::typeset {
namespace {

struct TurnStep {
  base::Point about;
  void operator()(page::Move &s) const { s.to = turned_upwards(s.to, about); }
  void operator()(page::Line &s) const { s.to = turned_upwards(s.to, about); }
  void operator()(page::Curve &s) const {
    s = {turned_upwards(s.c1, about), turned_upwards(s.c2, about), turned_upwards(s.to, about)};
  }
  void operator()(page::Close &) const {}
};

struct TurnItem {
  base::Point about;
  void operator()(page::Run &run) const {
    run.origin = turned_upwards(run.origin, about);
    run.upright = false;
  }
  void operator()(page::Path &path) const {
    for (auto &step : path.steps) std::visit(TurnStep{about}, step);
  }
  void operator()(page::Picture &picture) const { picture.box = turned_upwards(picture.box, about); }
  void operator()(page::Anchor &anchor) const { anchor.at = turned_upwards(anchor.at, about); }
  void operator()(page::Link &link) const { link.box = turned_upwards(link.box, about); }
};

} // namespace

base::Point turned_upwards(base::Point p, base::Point about) {
  return {about.x + (p.y - about.y), about.y - (p.x - about.x)};
}

base::Rect turned_upwards(const base::Rect &box, base::Point about) {
  // The top right corner becomes the top left one.
  return {turned_upwards(base::Point{box.right(), box.at.y}, about), {box.size.height, box.size.width}};
}

void turn_upwards(page::Item &item, base::Point about) { std::visit(TurnItem{about}, item.what); }

} // namespace strakebook::typeset
