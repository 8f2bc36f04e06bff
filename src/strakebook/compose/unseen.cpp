#include "strakebook/compose/unseen.h"

#include <algorithm>
#include <cmath>

#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/tables.h"

/// What the used marks stand for: coverage, and what the tolerance limits of the zones mean.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr int density_places = 1, gap_places = 2;

/// A share in percent to two figures: "0.027".
std::string share_figure(double share) {
  constexpr std::int64_t step = 1'000'000'000;
  const Ratio percent{std::llround(share * 100 * static_cast<double>(step)), step};
  int places = 0;
  for (double figure = share * 100; figure < 10 && places < 9; figure *= 10) ++places;
  return base::to_text(base::round_to(percent, places));
}

/// In the unit of the stations.
std::string gap_figure(const Scope &scope, Length length) {
  return in_station_unit(scope, length, gap_places);
}

content::Cell gap_ends(const Scope &scope, const unseen::Gap &gap) {
  return cell(scope.tell("unseen.gap-ends", {{"from", link(mark_id(gap.from), tied_mark(gap.from))}, {"to", link(mark_id(gap.to), tied_mark(gap.to))}}));
}

content::Row coverage_row(const Scope &scope, const std::string &name, const unseen::Coverage &found, bool touched) {
  std::vector<content::Cell> cells = {
      cell(content::strong(name)), found.area_m2 ? cell(figure(*found.area_m2)) : dash_cell(scope),
      cell(scope.say("results.used-of-read", {{"used", std::to_string(found.count.used)}, {"read", std::to_string(found.count.planned)}})),
      found.used_per_m2 ? cell(base::to_text(base::round_to(*found.used_per_m2, density_places))) : dash_cell(scope)};
  if (touched) cells.push_back(found.touched_share ? cell(share_figure(*found.touched_share)) : dash_cell(scope));
  cells.push_back(found.largest_gap ? cell(gap_figure(scope, found.largest_gap->length)) : dash_cell(scope));
  cells.push_back(found.largest_gap ? gap_ends(scope, *found.largest_gap) : dash_cell(scope));
  return row(std::move(cells));
}

content::Block coverage_table(const Scope &scope, Numbering &numbering) {
  const auto &found = scope.outlook().unseen;
  const bool touched = std::ranges::any_of(found.zones, [](const auto &zone) { return zone.coverage.touched_share.has_value(); });
  std::vector<content::Column> columns = {stretching(scope.say("results.zone")), column(scope.say("unseen.area"), Align::decimal, scope.say("unseen.m2")),
                                          column(scope.say("results.used"), Align::right, scope.say("unseen.of-planned")),
                                          column(scope.say("results.used"), Align::decimal, scope.say("pits.count-unit"))};
  if (touched) columns.push_back(column(scope.say("unseen.touched"), Align::decimal, scope.say("voice.percent")));
  columns.push_back(column(scope.say("unseen.gap"), Align::decimal, std::string(base::name_of(scope.survey().datum.station_unit))));
  columns.push_back(column(scope.say("unseen.gap-between")));
  auto table = labelled_table(scope, numbering, "summary", scope.tell("unseen.coverage-caption"), std::move(columns));
  std::vector<content::Row> rows;
  for (const auto &zone : found.zones) rows.push_back(coverage_row(scope, zone_name(scope, zone.coverage.zone), zone.coverage, touched));
  if (rows.size() > 1) {
    rows.push_back(coverage_row(scope, scope.say("results.all"), found.whole, touched));
    rows.back().total = true;
  }
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("unseen.gap-note"))};
  if (touched) table.notes.push_back(plain(scope.say("unseen.touched-note")));
  return block(std::move(table), "table/coverage");
}

/// Zones by what they say of their tolerance limit.
struct Limits {
  std::vector<std::string> given, few, none;
};
Limits sorted(const Scope &scope) {
  Limits out;
  for (const auto &zone : scope.assessment().zones) {
    const std::string name = zone_name(scope, zone.zone);
    if (!zone.statistics) out.few.push_back(name);
    else if (!zone.statistics->tolerance_limit) out.none.push_back(name);
    else
      out.given.push_back(scope.say_computed("unseen.tolerance-zone", {{"mm", unit_mm(scope, remaining_text(scope, zone.zone, *zone.statistics->tolerance_limit))},
                                                                       {"zone", name}}));
  }
  return out;
}

/// What the tolerance limits say of marks that nobody took, and why some zones have none.
content::Block tolerance_limits(const Scope &scope) {
  const auto &rule = scope.assessment().statistics;
  const Limits limits = sorted(scope);
  const auto listed = [&](const std::vector<std::string> &names) { return plain(join_and(scope, names)); };
  std::optional<Sentence> text;
  if (!limits.given.empty())
    text = scope.tell_computed("unseen.tolerance", {{"confidence", plain(percent(scope, rule.confidence))},
                                                    {"share", plain(percent(scope, rule.share))},
                                                    {"zones", listed(limits.given)}});
  if (!limits.few.empty())
    add_sentence(text, scope.tell_computed("unseen.tolerance-few", {{"zones", listed(limits.few)},
                                                                    {"least", plain(std::to_string(rule.least_for_statistics))}}));
  if (!limits.none.empty()) add_sentence(text, scope.tell_computed("unseen.tolerance-none", {{"zones", listed(limits.none)}}));
  return computed(scope, *text, scope.say("unseen.tolerance-rule"), label_link("table/zone-figures"));
}

} // namespace

std::vector<content::Block> between_the_marks(const Scope &scope, Numbering &numbering) {
  std::vector<content::Block> out = {sub_heading(scope, numbering, scope.say("unseen.title"), "unseen")};
  out.push_back(coverage_table(scope, numbering));
  if (!scope.assessment().zones.empty()) out.push_back(tolerance_limits(scope));
  append(out, pits_to_expect(scope, numbering));
  return out;
}

} // namespace strakebook::compose
