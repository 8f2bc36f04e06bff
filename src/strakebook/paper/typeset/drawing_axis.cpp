#include "strakebook/paper/typeset/drawing_axis.h"

#include <algorithm>

#include "strakebook/paper/typeset/drawing_path.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using content::Anchor;
using content::Level;
using Side = content::Axis::Side;

Point on_axis(const content::Axis &axis, const DrawingScale &scale, double value) {
  return axis.side == Side::left ? scale.place({axis.at, value}) : scale.place({value, axis.at});
}

Point outwards(Side side, Point from, Pt by) {
  switch (side) {
  case Side::top: return {from.x, from.y - by};
  case Side::left: return {from.x - by, from.y};
  case Side::bottom: break;
  }
  return {from.x, from.y + by};
}

void add_line(std::vector<page::Step> &steps, Point from, Point to) {
  steps.emplace_back(page::Move{from});
  steps.emplace_back(page::Line{to});
}

TextPlace number_place(Side side, Point tick_end, Pt gap, Pt cap) {
  const Point at = outwards(side, tick_end, gap);
  switch (side) {
  case Side::top: return {at, Anchor::centre, Level::baseline};
  case Side::left: return {{at.x, at.y + cap / 2}, Anchor::right, Level::baseline};
  case Side::bottom: break;
  }
  return {{at.x, at.y + cap}, Anchor::centre, Level::baseline};
}

/// Where the title ends: its right end, on its baseline.
Point title_end(const content::Axis &axis, const std::vector<PlacedText> &numbers, const TextPlace &first,
                const DrawingScale &scale, const Context &context) {
  if (axis.side == Side::left) {
    Pt top = scale.area.at.y;
    for (const auto &number : numbers) top = std::min(top, number.box.at.y);
    return {first.at.x, top - style::measure(context.style, "axis-title-gap")};
  }
  Pt left = scale.area.at.x;
  for (const auto &number : numbers) left = std::min(left, number.box.at.x);
  return {left - style::measure(context.style, "axis-title-gap"), first.at.y};
}

} // namespace

void draw_axis(const content::Axis &axis, const Brush &brush) {
  const Pt tick = style::measure(brush.style, "tick");
  page::Path path;
  if (axis.line) {
    const auto &area = brush.scale.area;
    const Point at = on_axis(axis, brush.scale, 0);
    if (axis.side == Side::left) add_line(path.steps, {at.x, area.at.y}, {at.x, area.bottom()});
    else add_line(path.steps, {area.at.x, at.y}, {area.right(), at.y});
  }
  for (const double value : axis.ticks) {
    const Point from = on_axis(axis, brush.scale, value);
    add_line(path.steps, from, outwards(axis.side, from, tick));
  }
  path.stroke = stroke_of(style::meaning_style(brush.style, "axis"), brush.style);
  if (!path.steps.empty() && path.stroke) brush.out.push_back({brush.tag, brush.id, std::move(path)});
}

std::vector<PlacedText> placed_axis(const content::Axis &axis, const DrawingScale &scale, const Context &context) {
  const Pt tick = style::measure(context.style, "tick"), gap = style::measure(context.style, "axis-number-gap");
  const Pt cap = cap_height(style::text_style(context.style, "axis-number"), context.fonts);
  const auto place = [&](double value) {
    return number_place(axis.side, outwards(axis.side, on_axis(axis, scale, value), tick), gap, cap);
  };
  std::vector<PlacedText> placed;
  placed.reserve(axis.numbers.size() + 1);
  for (const auto &[value, number] : axis.numbers)
    placed.push_back(placed_text({content::Text{number, content::Emphasis::plain}}, "axis-number", place(value),
                                 context));
  if (axis.title.empty()) return placed;
  const Point end = title_end(axis, placed, place(0), scale, context);
  placed.push_back(placed_text({content::Text{axis.title, content::Emphasis::plain}}, "axis-title",
                               {end, Anchor::right, Level::baseline}, context));
  return placed;
}

} // namespace strakebook::typeset
