#include "strakebook/compose/rate_words.h"

#include <algorithm>
#include <cmath>

#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/steel/years/rates.h"

namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr int rate_places = 3;
constexpr double nm_in_mm = 1'000'000;

std::string down(double value, int places) {
  const double part = std::pow(10, places);
  return base::to_text({static_cast<std::int64_t>(std::floor(value * part)), places});
}

/// "0.083 mm a year, 0.120 at the upper rate; 4.0 mm remaining is kept 8.2 years, 5.1 at the upper rate".
std::string rate_and_life(const Scope &scope, const years::Place &place) {
  const auto &rate = *place.governing();
  const auto *life = measured_life(scope, place);
  const auto &horizon = scope.outlook().history.horizon;
  const std::string rates = scope.say_computed(
      "comparison.rates", {{"place", tied_mark(place.id)}, {"rate", with_minus(rate_text(rate.per_year))}, {"upper", with_minus(rate_up(years::upper_rate(place)))}});
  if (life == nullptr || !life->upper) return rates + scope.say_computed("comparison.no-life");
  const base::Fill upper{"upper", life_text(*life->upper, horizon)};
  if (!life->mean) return rates + scope.say_computed("comparison.upper-life", {upper});
  return rates + scope.say_computed("comparison.lives", {{"mean", life_text(*life->mean, horizon)}, upper});
}

Inlines until(const Scope &scope, std::string_view zone) {
  return scope.tell("comparison.until", {{"criterion", plain(measured_name(scope, zone))},
                                         {"date", plain(date(scope, *scope.outlook().history.next_survey))}});
}

} // namespace

std::string rate_text(Ratio nm_a_year) {
  return base::to_text(base::round_to({nm_a_year.num, nm_a_year.den * static_cast<std::int64_t>(nm_in_mm)}, rate_places));
}

std::string rate_up(double nm_a_year) {
  const double part = std::pow(10, rate_places);
  return base::to_text({static_cast<std::int64_t>(std::ceil(nm_a_year / nm_in_mm * part)), rate_places});
}

std::string life_text(double years, std::optional<Ratio> beside) {
  constexpr double near = 0.1;
  const bool close = beside && std::abs(years - static_cast<double>(beside->num) / static_cast<double>(beside->den)) < near;
  return down(years, close ? 2 : 1);
}

std::string measured_name(const Scope &scope, std::string_view zone) {
  const auto &measured = assess::zone_result(scope.assessment(), zone).measured_by;
  return measured.empty() ? std::string() : criterion_name(scope, measured);
}

const years::Life *measured_life(const Scope &scope, const years::Place &place) {
  const auto life = std::ranges::find(place.lives, assess::zone_result(scope.assessment(), place.zone).measured_by, &years::Life::criterion);
  return life == place.lives.end() ? nullptr : &*life;
}

bool rate_tells(const Scope &scope, std::string_view zone) {
  const auto &found = years::zone_of(scope.outlook().history, zone);
  return found.rate && found.rate->verdict != assess::Verdict::meets;
}

std::optional<content::Row> rate_row(const Scope &scope, std::string_view zone) {
  const auto &history = scope.outlook().history;
  if (history.surveys.empty()) return std::nullopt;
  const auto &rate = years::zone_of(history, zone).rate;
  const auto verdict = rate ? rate->verdict : assess::Verdict::not_applicable;
  content::Cell figures = cell(rate ? plain(rate_and_life(scope, years::place_of(history, rate->at)))
                                    : content::soft(scope.say("comparison.nothing-matched")));
  figures.across = 4;
  return row({cell(rate ? until(scope, zone) : plain(scope.say("comparison.by-rate"))), std::move(figures),
              cell(verdict_sign(scope, verdict) + plain(verdict_word(scope, verdict)))});
}

std::optional<Sentence> rate_sentence(const Scope &scope, std::string_view zone) {
  const auto &found = years::zone_of(scope.outlook().history, zone);
  if (!found.rate) return std::nullopt;
  return scope.tell_computed("comparison.kept", {{"criterion", plain(measured_name(scope, zone))},
                                                 {"date", plain(date(scope, *scope.outlook().history.next_survey))},
                                                 {"figures", plain(rate_and_life(scope, years::place_of(scope.outlook().history, found.rate->at)))}});
}

std::optional<Sentence> nearest_in_time(const Scope &scope) {
  const auto &history = scope.outlook().history;
  if (!history.next_look || history.next_look->at.empty()) return std::nullopt;
  std::optional<Sentence> text = scope.tell_computed(
      "comparison.nearest", {{"figures", plain(rate_and_life(scope, years::place_of(history, history.next_look->at)))}});
  std::vector<std::string> zones;
  for (const auto &zone : history.zones)
    if (zone.matched == 0) zones.push_back(zone_name(scope, zone.zone));
  if (!zones.empty()) add_sentence(text, scope.tell_computed("comparison.not-compared", {{"zones", plain(join_and(scope, zones))}}));
  return text;
}

std::optional<Sentence> limit_before_next(const Scope &scope) {
  std::vector<std::string> zones;
  for (const auto &zone : scope.outlook().history.zones)
    if (zone.rate && zone.rate->verdict == assess::Verdict::falls_short)
      zones.push_back(scope.say_computed("comparison.zone-at", {{"zone", zone_name(scope, zone.zone)}, {"place", tied_mark(zone.rate->at)},
                                                                {"criterion", criterion_name(scope, zone.rate->limit_of)}}));
  if (zones.empty()) return std::nullopt;
  return scope.tell_computed("comparison.before-next", {{"zones", plain(join_and(scope, zones))}});
}

} // namespace strakebook::compose
