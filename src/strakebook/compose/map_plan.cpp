#include "strakebook/compose/map_plan.h"

#include <algorithm>
#include <optional>

namespace strakebook::compose {

namespace {

/// Heights in rows: of the first line of a strip under its edge, of its lower edge under the last line, and of the lanes.
struct Lanes {
  double first_row, below_last, strip_gap, figures, pits, shared;
};
constexpr Lanes of_shell{0.75, 0.85, 0.25, 0.22, 0.31, 0.66}, of_zone{0.5, 0.75, 0, 0.22, 0.32, 0.58};
constexpr double area_half = 0.42;
constexpr double least_area = 0.25; // half of the spacing: an area at one station still shows

/// Adds the rows of one strip below `high`; the lower edge, or `high` where there are none.
double add_strip(MapPlan &to, const Scope &scope, const Lanes &lanes, std::string_view zone, Strip strip, double high) {
  double line = high - lanes.first_row, above = line + 1 - lanes.shared;
  bool any = false;
  for (const auto &row : scope.survey().rows) {
    if (strip_of(scope, row) != strip || (!zone.empty() && row.zone != zone)) continue;
    const double below = line - lanes.shared;
    to.lines.push_back({&row, line, line + lanes.figures, line - lanes.pits, above, below});
    above = below;
    line -= 1;
    any = true;
  }
  if (!any) return high;
  const double low = line + 1 - lanes.below_last;
  to.strips.push_back({strip, low, high});
  return low;
}

Reach1D widened(Reach1D along, double spacing) {
  if (along.to - along.from >= 2 * least_area * spacing) return along;
  return {along.from - least_area * spacing, along.to + least_area * spacing};
}

} // namespace

MapPlan map_plan(const Scope &scope, std::string_view zone, base::Pt drawn) {
  MapPlan out;
  out.hull = hull_extent(scope);
  if (scope.survey().datum.spacing) out.spacing = metres_of(*scope.survey().datum.spacing);
  const auto &style = scope.source.house.style;
  out.sign_half = (out.hull.to - out.hull.from) * (style::meaning_style(style, "map-meets").shape_size / drawn) / 2;
  const Lanes &lanes = zone.empty() ? of_shell : of_zone;
  out.figures_above = !zone.empty();
  double y = 0;
  for (const Strip strip : {Strip::port, Strip::bottom, Strip::starboard}) {
    const double low = add_strip(out, scope, lanes, zone, strip, y);
    if (low < y) y = low - lanes.strip_gap;
  }
  out.height = -y - lanes.strip_gap;
  return out;
}

const MapLine *line_of(const MapPlan &plan, std::string_view row) {
  const auto found = std::ranges::find(plan.lines, row, [](const MapLine &line) { return std::string_view(line.row->id); });
  return found == plan.lines.end() ? nullptr : &*found;
}

void add_reach(Drawing &to, const Scope &scope, const MapPlan &plan, const survey::Reach &reach, const std::string &meaning) {
  const auto along = widened(stations_of_reach(scope, reach), plan.spacing);
  const auto rows = rows_of_reach(scope, reach);
  std::optional<Reach1D> run; // of neighbouring rows, from the lowest line to the highest
  const auto close = [&] {
    if (run) add_box(to, {along.from, run->from - area_half}, {along.to, run->to + area_half}, meaning);
    run.reset();
  };
  for (const auto &strip : plan.strips) {
    for (const auto &line : plan.lines) {
      if (line.y > strip.high || line.y < strip.low) continue;
      if (std::ranges::find(rows, line.row) == rows.end()) close();
      else run = Reach1D{line.y, run ? run->to : line.y};
    }
    close();
  }
}

} // namespace strakebook::compose
