#include "strakebook/compose/hull.h"

#include <algorithm>
#include <cmath>

namespace strakebook::compose {

namespace {

// Parts of the hull's length that shape the outline: a drawing of the kind of hull, not of its lines.
constexpr double rake = 0.035, shoulder = 0.06, counter = 0.012;

double metres_in(base::Unit unit) { return unit == base::Unit::foot ? 0.3048 : 1.0; } // international foot, exact

double step_for(double length, int most_numbers) {
  for (const double step : {1.0, 2.0, 3.0, 5.0, 10.0, 15.0})
    if (length / step <= most_numbers) return step;
  return 20.0;
}

} // namespace

Strip strip_of(const Scope &scope, const survey::Row &row) {
  const auto *zone = survey::zone_of(scope.survey(), row.zone);
  if (row.side == survey::Side::centre || (zone != nullptr && zone->plating == policy::Plating::bottom)) return Strip::bottom;
  return row.side == survey::Side::port ? Strip::port : Strip::starboard;
}

std::string strip_head(const Scope &scope, Strip strip) {
  if (strip == Strip::port) return scope.say("strips.port-head");
  return strip == Strip::bottom ? scope.say("strips.bottom-head") : scope.say("strips.starboard-head");
}

Reach1D hull_extent(const Scope &scope) {
  Reach1D out{0, metres_of(scope.survey().vessel.length.length)};
  for (const auto &mark : scope.survey().marks) out.to = std::max(out.to, metres_of(mark.station));
  return out;
}

bool counted_forward(const Scope &scope) { return survey::counts_forward(scope.survey().datum); }

double from_bow(const Scope &scope, double metres) {
  const auto hull = hull_extent(scope);
  return counted_forward(scope) ? hull.from + hull.to - metres : metres;
}

Reach1D stations_of_reach(const Scope &scope, const survey::Reach &reach) {
  Reach1D out = hull_extent(scope);
  if (reach.from) out.from = metres_of(*reach.from);
  if (reach.to) out.to = metres_of(*reach.to);
  if (reach.from && !reach.to) out.to = out.from;
  if (counted_forward(scope)) out = {from_bow(scope, out.to), from_bow(scope, out.from)};
  return out;
}

std::vector<XY> strip_outline(Strip strip, Reach1D hull, double low, double high) {
  const double length = hull.to - hull.from, a = hull.from, b = hull.to, height = high - low;
  if (strip == Strip::bottom) {
    const double nose = shoulder * length, inset = height * 0.3;
    return {{a, low + inset}, {a + nose, low}, {b - nose, low}, {b, low + inset}, {b, high - inset}, {b - nose, high}, {a + nose, high}, {a, high - inset}};
  }
  const double foot = rake * length, heel = counter * length, cut = height * 0.12;
  if (strip == Strip::port) return {{a - foot / 4, high}, {b, high}, {b, low + cut}, {b - heel, low}, {a + foot, low}, {a, low + height * 0.2}};
  return {{a - foot / 4, low}, {b, low}, {b, high - cut}, {b - heel, high}, {a + foot, high}, {a, high - height * 0.2}};
}

std::vector<const survey::Row *> rows_of_reach(const Scope &scope, const survey::Reach &reach) {
  std::vector<const survey::Row *> out;
  for (const auto &row : scope.survey().rows) {
    const bool named = std::ranges::find(reach.rows, row.id) != reach.rows.end();
    const bool whole = reach.rows.empty() && (reach.zone.empty() || reach.zone == row.zone);
    if (named || whole) out.push_back(&row);
  }
  return out;
}

std::string station_title(const Scope &scope) {
  return scope.say("map.station", {{"unit", std::string(base::name_of(scope.survey().datum.station_unit))}});
}

content::Axis hull_axis(const Scope &scope, content::Axis::Side side, double at, double mirrored_about, int most_numbers) {
  content::Axis axis{.side = side, .at = at, .ticks = {}, .numbers = {}, .title = {}};
  const auto hull = hull_extent(scope);
  const double unit = metres_in(scope.survey().datum.station_unit);
  const double first = hull.from / unit, last = hull.to / unit, step = step_for(last - first, most_numbers);
  const auto place = [&](double x) {
    const double drawn = from_bow(scope, x * unit);
    return mirrored_about > 0 ? mirrored_about - drawn : drawn;
  };
  constexpr double past_end = 1e-9;
  for (double x = first; x <= last + past_end; x += 1.0) axis.ticks.push_back(place(x));
  for (double x = first; x <= last + past_end; x += step) axis.numbers.emplace_back(place(x), std::to_string(static_cast<int>(x)));
  return axis;
}

Drawing locator_strip(const Scope &scope, const survey::Photo &photo) {
  const auto hull = hull_extent(scope);
  const auto *row = survey::row_of(scope.survey(), photo.at.row);
  const Strip strip = row == nullptr ? Strip::port : strip_of(scope, *row);
  const bool mirrored = strip == Strip::starboard; // the bow is at the right when one stands to starboard
  const auto place = [&](XY at) { return mirrored ? XY{hull.to - at.x, at.y} : at; };
  Drawing out;
  out.x0 = hull.from;
  out.x1 = hull.to;
  out.y = {content::Scale::Rule::fill, "strip-height-drawn"};
  out.pad_left = "strip-left";
  out.pad_right = "strip-right";
  out.pad_bottom = "profile-bottom";
  std::vector<XY> outline = strip_outline(strip == Strip::bottom ? Strip::bottom : Strip::port, hull, 0, 1);
  std::ranges::transform(outline, outline.begin(), place);
  add_area(out, std::move(outline), "hull-light");
  const XY at = place({from_bow(scope, metres_of(photo.at.station)), 0.5});
  const double arm = (hull.to - hull.from) / 12;
  if (photo.looking.text == "forward" || photo.looking.text == "aft") {
    const double towards = (photo.looking.text == "forward") != mirrored ? arm : -arm;
    const double beyond = arm / 3; // near an end the arrow is shorter: the room beside the hull holds this much of it
    const double tail = std::clamp(at.x + towards, hull.from - beyond, hull.to + beyond);
    out.elements.emplace_back(content::Span{{tail, at.y}, at, content::Span::Ends::end_arrow, "looking"});
    add_spot(out, at, "looked-at");
  } else {
    if (photo.looking.text == "square on") add_spot(out, at, "square-on");
    add_spot(out, at, "looked-at");
  }
  out.elements.emplace_back(hull_axis(scope, content::Axis::Side::bottom, 0, mirrored ? hull.to : 0));
  out.spoken = scope.say("photographs.strip-spoken", {{"photo", photo.id}, {"place", tied(photo.at.row, photo.at.station.raw)}});
  return out;
}

} // namespace strakebook::compose
