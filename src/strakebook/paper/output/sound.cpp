#include "strakebook/paper/output/sound.h"

#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace strakebook::output {

namespace {

using base::Point;
using base::Rect;

/// Sums of positions may miss the edge of the sheet by rounding; no device shows a two-hundredth of a point.
constexpr double slack = 0.005;

/// The limits of a page box in libharu, in points.
constexpr double least_side = 3, most_side = 14400;

class PageCheck {
public:
  PageCheck(const page::Document &document, std::size_t page_index)
      : document_(document), page_(document.pages.at(page_index)), number_(page_index + 1) {}

  void run() {
    for (double side : {page_.size.width.v, page_.size.height.v})
      require(side >= least_side && side <= most_side, "the sheet has an impossible size");
    for (const auto &item : page_.items) {
      item_ = &item;
      std::visit(*this, item.what);
    }
  }

  void operator()(const page::Run &run) const {
    require(run.font >= 0 && static_cast<std::size_t>(run.font) < document_.fonts.size(),
            "a font that is not there");
    require(std::isfinite(run.size.v) && run.size.v > 0, "a type size that is not above zero");
    colour(run.colour);
    on_sheet(run.origin);
    double length = 0;
    std::uint32_t last = 0;
    for (const auto &glyph : run.glyphs) {
      require(std::isfinite(glyph.advance.v) && std::isfinite(glyph.offset.x.v) &&
                  std::isfinite(glyph.offset.y.v),
              "a glyph at a place that is not finite");
      require(glyph.cluster >= last && glyph.cluster < run.text.size(),
              "glyphs that are not in the order of their text");
      last = glyph.cluster;
      length += glyph.advance.v;
    }
    require(run.glyphs.empty() ? run.text.empty() : run.glyphs.front().cluster == 0, "text without glyphs");
    on_sheet(run.upright ? Point{{run.origin.x.v + length}, run.origin.y}
                         : Point{run.origin.x, {run.origin.y.v - length}});
  }

  void operator()(const page::Path &path) const {
    require(path.steps.empty() || std::holds_alternative<page::Move>(path.steps.front()),
            "a path that does not begin with a move");
    for (const auto &step : path.steps)
      std::visit(*this, step);
    if (path.fill)
      colour(*path.fill);
    if (path.stroke)
      stroke(*path.stroke);
  }
  void operator()(const page::Move &step) const { on_sheet(step.to); }
  void operator()(const page::Line &step) const { on_sheet(step.to); }
  void operator()(const page::Curve &step) const {
    for (auto place : {step.c1, step.c2, step.to})
      on_sheet(place);
  }
  void operator()(const page::Close &) const {}

  void operator()(const page::Picture &picture) const { box_on_sheet(picture.box); }
  void operator()(const page::Anchor &anchor) const { on_sheet(anchor.at); }
  void operator()(const page::Link &link) const { box_on_sheet(link.box); }

private:
  void require(bool holds, const char *what) const {
    if (holds)
      return;
    throw std::logic_error(fmt::format("page {}, item \"{}\": {}", number_, item_ ? item_->id : "", what));
  }

  void on_sheet(Point place) const {
    require(std::isfinite(place.x.v) && std::isfinite(place.y.v), "a place that is not finite");
    require(place.x.v >= -slack && place.x.v <= page_.size.width.v + slack && place.y.v >= -slack &&
                place.y.v <= page_.size.height.v + slack,
            "a place that is not on the sheet");
  }
  void box_on_sheet(const Rect &box) const {
    on_sheet(box.at);
    on_sheet(Point{box.right(), box.bottom()});
    require(box.size.width.v >= 0 && box.size.height.v >= 0, "a box of negative size");
  }

  void colour(const page::Colour &colour) const {
    for (double part : {colour.r, colour.g, colour.b})
      require(part >= 0 && part <= 1, "a colour outside 0 to 1");
  }

  void stroke(const page::Stroke &stroke) const {
    require(std::isfinite(stroke.width.v) && stroke.width.v >= 0, "a line of negative width");
    colour(stroke.colour);
    double pattern = 0;
    for (auto part : stroke.dash) {
      require(std::isfinite(part.v) && part.v >= 0, "a dash of negative length");
      pattern += part.v;
    }
    require(stroke.dash.empty() || pattern > 0, "a dash pattern without length");
  }

  const page::Document &document_;
  const page::Page &page_;
  std::size_t number_;
  const page::Item *item_ = nullptr;
};

} // namespace

void require_sound(const page::Document &document, std::size_t page_index) {
  PageCheck(document, page_index).run();
}

} // namespace strakebook::output
