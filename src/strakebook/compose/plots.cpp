#include "strakebook/compose/plots.h"

#include <algorithm>

namespace strakebook::compose {

using content::Anchor;
using content::Axis;
using content::Level;
using content::plain;

namespace {

Axis axis_of(const PlotAxis &from, Axis::Side side, double at) {
  Axis out{.side = side, .at = at, .ticks = {}, .numbers = from.numbers, .title = from.title};
  for (const auto &[value, words] : from.numbers) out.ticks.push_back(value);
  out.line = true;
  return out;
}

Drawing ground(const PlotAxis &across, const PlotAxis &up, std::string spoken) {
  Drawing out;
  out.x0 = across.low;
  out.x1 = across.high;
  out.y0 = up.low;
  out.y1 = up.high;
  out.pad_left = "plot-left";
  out.pad_right = "plot-right";
  out.pad_top = "plot-top";
  out.pad_bottom = "plot-bottom";
  out.spoken = std::move(spoken);
  return out;
}

void add_axes(Drawing &to, const PlotAxis &across, const PlotAxis &up) {
  to.elements.emplace_back(axis_of(across, Axis::Side::bottom, up.low));
  to.elements.emplace_back(axis_of(up, Axis::Side::left, across.low));
}

/// The band of `doubt` either way of the diagonal, cut to the square from `low` to `high`.
std::vector<XY> band(double low, double high, double doubt) {
  return {{low, low}, {low, low + doubt}, {high - doubt, high}, {high, high}, {high, high - doubt}, {low + doubt, low}};
}

} // namespace

Drawing comparison_plot(const Comparison &what, std::string spoken) {
  PlotAxis up = what.both;
  up.title = what.after_title;
  Drawing out = ground(what.both, up, std::move(spoken));
  out.y = {content::Scale::Rule::as_x, {}};
  const double low = what.both.low, high = what.both.high;
  if (what.doubt > 0) add_area(out, band(low, high, std::min(what.doubt, high - low)), "doubt");
  add_line(out, {{low, low}, {high, high}}, "nominal");
  for (const auto &place : what.places) add_spot(out, {place.before, place.after}, "mark");
  for (const auto &place : what.places) {
    if (place.name.empty()) continue;
    auto &name = add_label(out, {place.before, place.after}, plain(place.name), Anchor::left, Level::middle);
    name.target = place.target;
    name.yields = true;
    name.stays = true;
  }
  add_axes(out, what.both, up);
  return out;
}

Drawing extreme_value_plot(const ExtremeValues &what, std::string spoken) {
  Drawing out = ground(what.reduced, what.depth, std::move(spoken));
  out.y = {content::Scale::Rule::fill, "plot-height"};
  for (const auto &[depth, name] : what.limits) {
    add_line(out, {{what.reduced.low, depth}, {what.reduced.high, depth}}, "limit");
    add_label(out, {what.reduced.high, depth}, plain(name), Anchor::left, Level::middle);
  }
  for (const auto *bound : {&what.low, &what.high})
    if (!bound->empty()) add_line(out, *bound, "original");
  if (!what.line.empty()) add_line(out, what.line, "axis");
  for (const auto &at : what.maxima) add_spot(out, at, "mark");
  add_axes(out, what.reduced, what.depth);
  return out;
}

} // namespace strakebook::compose
