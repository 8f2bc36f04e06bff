#include <algorithm>

#include "strakebook/compose/comparison_parts.h"
#include "strakebook/compose/rate_words.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/subjects.h"

/// Place by place: what an earlier survey called it, where that lies here, then and now.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr int change_places = 2;

/// With its sign; nought has none.
std::string signed_text(std::string figure) {
  return figure.find_first_of("123456789") == std::string::npos ? figure : with_sign(std::move(figure));
}

/// A position in the unit of this survey's stations, to a hundredth.
std::string position_text(const Scope &scope, Length position) {
  constexpr std::int64_t metre = 1'000'000'000, foot = 304'800'000; // nm
  const bool feet = scope.survey().datum.station_unit == base::Unit::foot;
  return with_minus(base::to_text(base::round_to({position.nm(), feet ? foot : metre}, 2)));
}

std::string change_words(const Scope &scope, const years::Place &place) {
  if (!place.change) return {};
  switch (*place.change) {
  case years::Change::lost: return scope.say("comparison.is-lost");
  case years::Change::within_doubt: return scope.say("comparison.is-within");
  case years::Change::grown: return scope.say("comparison.is-grown");
  }
  return {};
}

content::Cell life_cell(const Scope &scope, const years::Place &place) {
  const auto *life = measured_life(scope, place);
  return life && life->upper ? cell(life_text(*life->upper, scope.outlook().history.horizon)) : dash_cell(scope);
}

/// Then, now, change and rate; where there are several surveys the rate that governs is strong.
void add_figures(std::vector<content::Cell> &cells, const Scope &scope, const years::Place &place, Length then, const years::Rate *rate) {
  cells.push_back(cell(base::mm_exact(then)));
  cells.push_back(cell(remaining_text(scope, place.zone, place.judged())));
  cells.push_back(cell(signed_text(base::mm_text(place.judged() - then, change_places))));
  if (rate == nullptr) {
    cells.push_back(dash_cell(scope));
    cells.push_back(dash_cell(scope));
    return;
  }
  const std::string figure = with_minus(rate_text(rate->per_year));
  const bool told_apart = place.earlier.size() > 1 && rate == place.governing();
  cells.push_back(cell(told_apart ? content::strong(figure) : plain(figure)));
  cells.push_back(cell(rate_up(rate->spread)));
}

void add_last(std::vector<content::Cell> &cells, const Scope &scope, const years::Place &place, bool governs) {
  cells.push_back(governs ? life_cell(scope, place) : cell(std::string()));
  const std::string words = governs ? change_words(scope, place) : std::string();
  cells.push_back(cell(place.change == years::Change::grown ? content::strong(words) : plain(words)));
}

const years::Rate *rate_since(const years::Place &place, const std::string &survey) {
  for (const auto *rate : {&place.short_term, &place.long_term})
    if (*rate && (*rate)->since == survey) return &**rate;
  return nullptr;
}

content::Row earlier_row(const Scope &scope, const years::Place &place, const years::Earlier &earlier, bool several) {
  const std::string called = several ? scope.say("comparison.called", {{"survey", earlier.survey}, {"place", tied_mark(earlier.id)}})
                                     : tied_mark(earlier.id);
  const auto *rate = rate_since(place, earlier.survey);
  std::vector<content::Cell> cells = {cell(link(subject_target(scope, place.id), tied_mark(place.id))), cell(called),
                                      cell(position_text(scope, earlier.position)),
                                      cell(signed_text(base::mm_text(earlier.off, 0)))};
  add_figures(cells, scope, place, earlier.remaining, rate);
  add_last(cells, scope, place, rate == place.governing());
  return row(std::move(cells));
}

content::Row built_row(const Scope &scope, const years::Place &place) {
  std::vector<content::Cell> cells = {cell(link(subject_target(scope, place.id), tied_mark(place.id))),
                                      cell(content::italic(scope.say("comparison.as-built"))), dash_cell(scope), dash_cell(scope)};
  add_figures(cells, scope, place, place.as_built->then, &*place.as_built);
  add_last(cells, scope, place, true);
  return row(std::move(cells));
}

/// What is known from as built alone has a line only where the zone's shortest life is taken from it.
std::vector<content::Row> rows_of(const Scope &scope, const std::string &row_id) {
  std::vector<content::Row> out;
  const bool several = scope.survey().earlier.size() > 1;
  for (const auto &place : scope.outlook().history.places) {
    if (place.row != row_id) continue;
    for (const auto &earlier : place.earlier) out.push_back(earlier_row(scope, place, earlier, several));
    if (place.as_built && years::zone_of(scope.outlook().history, place.zone).shortest_at == place.id) out.push_back(built_row(scope, place));
  }
  return out;
}

Inlines group_head(const Scope &scope, const survey::Row &row) {
  const std::string limit = measured_name(scope, row.zone);
  const InlineFill name{"row", content::strong(row_words(scope, row.id))};
  return limit.empty() ? scope.tell("comparison.row-alone", {name}) : scope.tell("comparison.row-to", {name, {"limit", plain(limit)}});
}

std::vector<content::Column> place_columns(const Scope &scope) {
  const std::string mm = scope.say("voice.mm"), a_year = scope.say("comparison.mm-a-year");
  return {column(scope.say("comparison.place")), stretching(scope.say("comparison.called-then")),
          column(scope.say("comparison.lies-at"), Align::decimal, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("comparison.off"), Align::right, mm), column(scope.say("comparison.then"), Align::decimal, mm),
          column(scope.say("comparison.now"), Align::decimal, mm), column(scope.say("comparison.change"), Align::decimal, mm),
          column(scope.say("comparison.rate"), Align::decimal, a_year), column(scope.say("comparison.spread"), Align::decimal, a_year),
          column(scope.say("comparison.life"), Align::decimal, scope.say("comparison.at-upper")), column(scope.say("comparison.seen"))};
}

} // namespace

content::Block places_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, "readings", scope.tell("comparison.places-caption"), place_columns(scope));
  for (const auto &one : scope.survey().rows)
    if (auto rows = rows_of(scope, one.id); !rows.empty())
      table.groups.push_back({.head = group_head(scope, one), .id = {}, .rows = std::move(rows)});
  table.notes = {plain(scope.say("comparison.places-note", {{"band", figure(scope.policy().decision.band)}}))};
  return block(std::move(table), "table/compared");
}

} // namespace strakebook::compose
