#include <algorithm>

#include "strakebook/compose/comparison_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/rate_words.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"

/// What the places of each zone say together, and what follows for the next look.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

Inlines at_place(const Scope &scope, std::string figure, const std::string &place) {
  return scope.tell("comparison.at-place", {{"figure", plain(std::move(figure))}, {"place", link(subject_target(scope, place), tied_mark(place))}});
}

content::Cell verdict_cell(const Scope &scope, const years::ZoneHistory &zone) {
  if (!zone.rate) return cell(verdict_sign(scope, assess::Verdict::not_applicable));
  return cell(verdict_sign(scope, zone.rate->verdict) + plain(verdict_word(scope, zone.rate->verdict)));
}

/// The zone, and in soft under it the limit that its lives are counted to.
Inlines zone_and_limit(const Scope &scope, const std::string &zone) {
  Inlines text = content::strong(zone_name(scope, zone));
  const std::string limit = measured_name(scope, zone);
  if (limit.empty()) return text;
  text.emplace_back(content::LineBreak{});
  return std::move(text) + content::soft(scope.say("comparison.to-limit", {{"limit", limit}}));
}

content::Row zone_row(const Scope &scope, const years::ZoneHistory &zone) {
  const auto count = [](int n) { return cell(std::to_string(n)); };
  const auto &horizon = scope.outlook().history.horizon;
  return row({cell(zone_and_limit(scope, zone.zone)), count(zone.matched), count(zone.lost), count(zone.within_doubt),
              count(zone.grown),
              zone.greatest_at.empty() || zone.greatest <= Ratio{0, 1} ? dash_cell(scope) : cell(at_place(scope, rate_text(zone.greatest), zone.greatest_at)),
              zone.mean_lost ? cell(rate_text(*zone.mean_lost)) : dash_cell(scope),
              zone.shortest_at.empty() ? dash_cell(scope) : cell(at_place(scope, life_text(zone.shortest, horizon), zone.shortest_at)),
              verdict_cell(scope, zone)});
}

Inlines zones_note(const Scope &scope) {
  const auto &history = scope.outlook().history;
  Inlines text = scope.tell("comparison.zones-note", {{"band", plain(figure(scope.policy().decision.band))},
                                                      {"source", plain(scope.policy().years.source)}});
  if (!history.next_survey) return text;
  return text + scope.tell("comparison.verdict-note", {{"date", plain(date(scope, *history.next_survey))}});
}

std::vector<std::string> grown(const Scope &scope) {
  std::vector<std::string> out;
  for (const auto &place : scope.outlook().history.places) {
    if (place.change != years::Change::grown) continue;
    const auto &was = years::grown_since(place);
    out.push_back(scope.say_computed("comparison.grown-one", {{"place", tied_mark(place.id)}, {"then", short_mm(was.remaining)},
                                                              {"survey", was.survey}, {"now", short_mm(place.judged())}}));
  }
  return out;
}

Sentence next_look_sentence(const Scope &scope, const years::NextLook &look) {
  const auto &rule = scope.policy().years;
  const InlineFill day{"date", plain(date(scope, look.date))}, months{"months", plain(std::to_string(rule.longest_months))};
  if (look.at.empty()) return scope.tell_computed("comparison.look-by-cap-alone", {day, months});
  const auto &place = years::place_of(scope.outlook().history, look.at);
  const InlineFill at{"place", link(subject_target(scope, look.at), tied_mark(look.at))};
  const double life = *measured_life(scope, place)->upper;
  if (life == 0) return scope.tell_computed("comparison.look-at-once", {at, {"criterion", plain(measured_name(scope, place.zone))}});
  const InlineFill part{"part", plain(percent(scope, rule.life_part))}, left{"life", plain(life_text(life, std::nullopt))};
  return look.capped ? scope.tell_computed("comparison.look-by-cap", {day, months, part, left, at})
                     : scope.tell_computed("comparison.look-by-life", {day, part, left, at});
}

} // namespace

content::Block changes_table(const Scope &scope, Numbering &numbering) {
  const std::string a_year = scope.say("comparison.mm-a-year");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("comparison.zones-caption"),
      {stretching(scope.say("comparison.zone")), column(scope.say("comparison.matched"), Align::right),
       column(scope.say("comparison.lost"), Align::right, scope.say("comparison.beyond-doubt")),
       column(scope.say("comparison.unchanged"), Align::right, scope.say("comparison.within-doubt")),
       column(scope.say("comparison.grown"), Align::right, scope.say("comparison.beyond-doubt")),
       column(scope.say("comparison.greatest"), Align::left, a_year), column(scope.say("comparison.mean-lost"), Align::decimal, a_year),
       column(scope.say("comparison.shortest"), Align::left, scope.say("comparison.years")),
       column(scope.say("comparison.keeps"))});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.outlook().history.zones) rows.push_back(zone_row(scope, zone));
  add_rows(table, std::move(rows));
  table.notes = {zones_note(scope)};
  return block(std::move(table), "table/changes");
}

std::vector<content::Block> changes_in_words(const Scope &scope) {
  std::vector<content::Block> out;
  const auto &history = scope.outlook().history;
  if (history.next_look)
    out.push_back(computed(scope, next_look_sentence(scope, *history.next_look), scope.say("comparison.by-life", {{"source", scope.policy().years.source}})));
  if (const auto places = grown(scope); !places.empty())
    out.push_back(computed(scope, scope.tell_computed("comparison.grown-words", {{"places", plain(join_and(scope, places))}}),
                           scope.say("comparison.by-doubt", {{"band", figure(scope.policy().decision.band)}})));
  return out;
}

} // namespace strakebook::compose
