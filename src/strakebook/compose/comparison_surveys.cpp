#include "strakebook/compose/comparison_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/results_parts.h"

/// The surveys that are compared, and what of them was not found again.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string years_text(Ratio years) { return base::to_text(base::round_to(years, 2)); }

std::string counted_in(const Scope &scope, const survey::EarlierDatum &datum) {
  switch (datum.stations_in) {
  case survey::StationsIn::metres: return scope.say("comparison.in-metres");
  case survey::StationsIn::feet: return scope.say("comparison.in-feet");
  case survey::StationsIn::frames: return scope.say("comparison.in-frames", {{"spacing", untorn(as_written(*datum.frame_spacing))}});
  }
  return {};
}

std::string counted_towards(const Scope &scope, survey::Counts counts) {
  return counts == survey::Counts::aft ? scope.say("comparison.aft") : scope.say("comparison.forward");
}

/// "From the after end of the counter, forward, in frames 500 mm apart. That lies at 18.00 m here, within 50 mm."
Inlines datum_words(const Scope &scope, const survey::EarlierDatum &datum) {
  Inlines zero = plain(untorn(as_written(datum.zero)));
  Inlines within = datum.zero_within ? scope.tell("comparison.zero-within", {{"within", plain(untorn(as_written(*datum.zero_within)))}})
                                     : scope.tell("comparison.zero-open");
  return scope.tell("comparison.datum", {{"from", prose(scope, datum.from.text)}, {"towards", plain(counted_towards(scope, datum.counts))},
                                         {"in", plain(counted_in(scope, datum))}, {"zero", std::move(zero)}, {"within", std::move(within)}});
}

std::string doubts(const Scope &scope, const survey::EarlierSurvey &earlier) {
  const std::string u = unit_mm(scope, base::mm_exact(earlier.u));
  if (!earlier.depth_u) return scope.say("comparison.u", {{"u", u}});
  return scope.say("comparison.u-both", {{"u", u}, {"depth", unit_mm(scope, base::mm_exact(*earlier.depth_u))}});
}

Inlines gauge_words(const Scope &scope, const survey::EarlierSurvey &earlier) {
  Inlines text = scope.tell("comparison.gauge", {{"gauge", prose(scope, earlier.gauge.text)}, {"u", plain(doubts(scope, earlier))}});
  return earlier.u_basis.given() ? text + scope.tell("comparison.u-basis", {{"basis", prose(scope, earlier.u_basis.text)}}) : text;
}

Inlines survey_words(const survey::EarlierSurvey &earlier) {
  Inlines text = content::strong(earlier.id);
  for (const auto *words : {&earlier.number, &earlier.by, &earlier.source}) {
    if (!words->given()) continue;
    text.emplace_back(content::LineBreak{});
    text = std::move(text) + content::soft(words->text);
  }
  return text;
}

content::Row survey_row(const Scope &scope, const survey::EarlierSurvey &earlier, const years::Compared &found) {
  return row({cell(survey_words(earlier)),
              cell(plain(date(scope, earlier.inspected.value))), cell(years_text(found.years)), cell(gauge_words(scope, earlier)),
              cell(datum_words(scope, earlier.datum)),
              cell(scope.say("comparison.of", {{"n", std::to_string(found.matched)},
                                               {"all", std::to_string(found.matched + static_cast<int>(found.unmatched.size()))}}))},
             {}, earlier.span);
}

content::Block lost_sight(const Scope &scope, std::string survey, const std::vector<std::string> &places) {
  std::vector<std::string> tied_places;
  for (const auto &place : places) tied_places.push_back(tied_mark(place));
  return paragraph(scope.tell("comparison.not-found", {{"survey", content::strong(std::move(survey))}, {"n", plain(std::to_string(places.size()))},
                                                       {"places", plain(base::joined(tied_places, scope.say("voice.list-between")))}}),
                   look::note);
}

} // namespace

content::Block earlier_surveys_table(const Scope &scope, Numbering &numbering) {
  const auto &policy = scope.policy().years;
  auto table = labelled_table(scope, numbering, look::plain_table, scope.tell("comparison.surveys-caption"),
                              {stretching(scope.say("comparison.survey")), column(scope.say("comparison.day")),
                               column(scope.say("comparison.ago"), Align::decimal, scope.say("comparison.years")),
                               stretching(scope.say("comparison.read-with")), stretching(scope.say("comparison.counts-from")),
                               column(scope.say("comparison.found-again"), Align::right, scope.say("comparison.of-places"))});
  std::vector<content::Row> rows;
  const auto &found = scope.outlook().history.surveys;
  for (std::size_t i = 0; i < found.size(); ++i) rows.push_back(survey_row(scope, scope.survey().earlier[i], found[i]));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("comparison.surveys-note", {{"radius", unit_mm(scope, base::mm_exact(policy.match_radius, 0))}}))};
  return block(std::move(table), "table/earlier-surveys");
}

std::vector<content::Block> not_found_again(const Scope &scope) {
  std::vector<content::Block> out;
  const auto &history = scope.outlook().history;
  if (!history.unmatched_here.empty()) out.push_back(lost_sight(scope, scope.say("comparison.this-survey"), history.unmatched_here));
  for (const auto &survey : history.surveys)
    if (!survey.unmatched.empty()) out.push_back(lost_sight(scope, survey.id, survey.unmatched));
  if (!out.empty()) out.insert(out.begin(), item_heading(scope.say("comparison.not-found-title")));
  return out;
}

} // namespace strakebook::compose
