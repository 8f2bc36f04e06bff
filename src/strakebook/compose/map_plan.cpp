#include "strakebook/compose/map_plan.h"

#include <algorithm>
#include <optional>

namespace strakebook::compose {

namespace {

// Heights in rows. On the map of the shell every row has the same lanes, and shares the one between it and the next; on the map
// of a zone a row has only the lanes that it needs.
constexpr double first_row = 0.75, below_last = 0.85, strip_gap = 0.25, shared_lane = 0.66, shell_words = 0.34, shell_area = 0.42;
constexpr double figure_lane = 0.22, shell_pits = 0.31, zone_pits = 0.32, zone_area = 0.2;
constexpr double over_figures = 0.32, flag_lane = 0.42, over_flags = 0.56;
constexpr double under_signs = 0.16, word_lane = 0.32, under_words = 0.42, pit_words = 0.58, under_pits = 0.7;
constexpr double least_area = 0.25; // half of the spacing: an area at one station still shows

/// Adds the rows of one strip of the shell below `high`; the lower edge, or `high` where there are none.
double add_strip(MapPlan &to, const Scope &scope, Strip strip, double high) {
  double line = high - first_row, above = line + 1 - shared_lane;
  bool any = false;
  for (const auto &row : scope.survey().rows) {
    if (strip_of(scope, row) != strip) continue;
    const double below = line - shared_lane;
    to.lines.push_back({&row, line, line + figure_lane, line - shell_pits, above, below, line - shell_words});
    above = below;
    line -= 1;
    any = true;
  }
  if (!any) return high;
  const double low = line + 1 - below_last;
  to.strips.push_back({strip, low, high});
  return low;
}

/// Adds one row of a zone below `high`; its lower edge.
double add_row(MapPlan &to, const Scope &scope, const survey::Row &row, double high) {
  const auto on_row = [&](const auto &one) { return one.at.row == row.id; };
  const auto unread = [&](const assess::MarkResult &one) { return !one.used && scope.survey().marks[one.mark].row == row.id; };
  const bool flags = std::ranges::any_of(scope.survey().photos, on_row), pits = std::ranges::any_of(scope.survey().pits, on_row);
  const bool words = std::ranges::any_of(scope.assessment().marks, unread);
  const double y = high - (flags ? over_flags : over_figures);
  to.lines.push_back({&row, y, y + figure_lane, y - zone_pits, y + flag_lane, y - pit_words, y - (pits ? pit_words : word_lane)});
  return y - (pits ? under_pits : words ? under_words : under_signs);
}

double add_zone_strip(MapPlan &to, const Scope &scope, std::string_view zone, Strip strip, double high) {
  double low = high;
  for (const auto &row : scope.survey().rows)
    if (strip_of(scope, row) == strip && row.zone == zone) low = add_row(to, scope, row, low);
  if (low < high) to.strips.push_back({strip, low, high});
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
  out.figures_above = !zone.empty();
  out.area_half = zone.empty() ? shell_area : zone_area;
  double y = 0;
  for (const Strip strip : {Strip::port, Strip::bottom, Strip::starboard}) {
    const double low = zone.empty() ? add_strip(out, scope, strip, y) : add_zone_strip(out, scope, zone, strip, y);
    if (low < y) y = zone.empty() ? low - strip_gap : low;
  }
  out.height = zone.empty() ? -y - strip_gap : -y;
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
    if (run) add_box(to, {along.from, run->from - plan.area_half}, {along.to, run->to + plan.area_half}, meaning);
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
