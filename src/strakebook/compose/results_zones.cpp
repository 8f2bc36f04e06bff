#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"

/// What the used marks of each zone say together: one line a zone. It judges nothing.
namespace strakebook::compose {

using content::plain;

namespace {

constexpr int mean_places = 2, deviation_places = 3;

Length to_nanometre(Ratio nm) { return Length::nanometres(base::round_to(nm, 0).digits); }

std::string interval(const Scope &scope, const assess::Statistics &statistics) {
  return scope.say("results.interval-range", {{"low", fixed_mm(statistics.mean_low, mean_places)},
                                              {"high", fixed_mm(statistics.mean_high, mean_places)}});
}

void add_figures(std::vector<content::Cell> &cells, const Scope &scope, const assess::ZoneResult &zone) {
  if (!zone.min || !zone.max || !zone.mean_nm) {
    for (int i = 0; i < 3; ++i) cells.push_back(dash_cell(scope));
    return;
  }
  cells.push_back(cell(content::strong(remaining_text(scope, zone.zone, *zone.min))));
  cells.push_back(cell(fixed_mm(to_nanometre(*zone.mean_nm), mean_places)));
  cells.push_back(cell(remaining_text(scope, zone.zone, *zone.max)));
}

void add_statistics(std::vector<content::Cell> &cells, const Scope &scope, const assess::ZoneResult &zone) {
  if (!zone.statistics) {
    for (int i = 0; i < 4; ++i) cells.push_back(dash_cell(scope));
    return;
  }
  const assess::Statistics &found = *zone.statistics;
  cells.push_back(cell(fixed_mm(found.deviation, deviation_places)));
  cells.push_back(cell(interval(scope, found)));
  cells.push_back(cell(remaining_text(scope, zone.zone, to_nanometre(found.percentile_nm))));
  cells.push_back(found.tolerance_limit ? cell(remaining_text(scope, zone.zone, *found.tolerance_limit)) : dash_cell(scope));
}

content::Row zone_row(const Scope &scope, const assess::ZoneResult &zone) {
  std::vector<content::Cell> cells = {cell(content::strong(zone_name(scope, zone.zone))),
                                      cell(scope.say("results.used-of-read", {{"used", std::to_string(zone.count.used)},
                                                                              {"read", std::to_string(zone.count.read)}}))};
  add_figures(cells, scope, zone);
  add_statistics(cells, scope, zone);
  return row(std::move(cells));
}

} // namespace

content::Block zones_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  const policy::StatisticsRule &rule = scope.assessment().statistics;
  const base::Fill confidence{"confidence", percent(scope, rule.confidence)}, share{"share", percent(scope, rule.share)};
  const base::Fill part{"percentile", percent(scope, rule.percentile)};
  auto table = labelled_table(
      scope, numbering, "summary", scope.tell("results.zones-caption"),
      {stretching(scope.say("results.zone")), column(scope.say("results.used"), Align::right, scope.say("results.of-read")),
       column(scope.say("results.min"), Align::decimal, mm), column(scope.say("results.mean"), Align::decimal, mm),
       column(scope.say("results.max"), Align::decimal, mm), column(scope.say("results.deviation"), Align::decimal, mm),
       column(scope.say("results.mean-within"), Align::decimal, confidence.value),
       column(scope.say("results.low-percentile"), Align::decimal, part.value),
       column(scope.say("results.tolerance-limit"), Align::decimal, scope.say("results.share-at-confidence", {share, confidence}))});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.assessment().zones) rows.push_back(zone_row(scope, zone));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("results.zones-note",
                                 {confidence, share, {"type", std::to_string(static_cast<int>(rule.percentile_type))},
                                  {"least", std::to_string(rule.least_for_statistics)}}))};
  return block(std::move(table), "table/zone-figures");
}

} // namespace strakebook::compose
