#include "strakebook/steel/years/rates.h"

#include <algorithm>
#include <cmath>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/policy/exact.h"
#include "strakebook/steel/years/elapsed.h"

namespace strakebook::years {

using policy::exact;
using policy::Exact;
using policy::square;

namespace {

double number(Fraction value) { return static_cast<double>(value.num) / static_cast<double>(value.den); }
Exact squared(const Exact &value) { return value * value; }
Fraction inverse(Fraction positive) { return {positive.den, positive.num}; }

std::optional<base::Date> middle_of_year(const std::optional<survey::Fact> &built) {
  if (!built || built->text.text.size() != 4) return std::nullopt;
  return base::parse_date(built->text.text + "-07-01");
}

} // namespace

Rate rate_since(std::string since, const Known &then, const Known &now, Ratio years, base::Decimal band) {
  Rate rate{.since = std::move(since), .then = then.thickness, .lost = then.thickness - now.thickness, .years = years};
  rate.per_year = policy::ratio(policy::fraction({rate.lost.nm(), 1}) * inverse(policy::fraction(years)));
  rate.variance = then.variance + now.variance;
  rate.spread = std::sqrt(number(rate.variance)) / base::approximate(years);
  rate.upper = base::approximate(rate.per_year) + base::approximate(band) * rate.spread;
  return rate;
}

std::optional<Rate> rate_as_built(const survey::Survey &survey, const policy::Policy &policy, const survey::Zone &zone,
                                  const Known &now) {
  const Length nominal = zone.original.nominal.value;
  const auto built = middle_of_year(survey.vessel.built);
  const auto interval = assess::delivery(zone, policy, nominal).value_or(assess::Interval{});
  if (assess::weak_basis(zone, policy) || !built || *built >= survey.report.inspected->value) return std::nullopt;
  constexpr int of_equal_chance = 12; // the variance of an interval is its width squared over 12
  const Known then{nominal, policy::lowest(square((interval.upper - interval.lower).nm()), of_equal_chance)};
  return rate_since(base::iso(*built), then, now, years_between(*built, survey.report.inspected->value), policy.decision.band);
}

Change change_of(const Rate &rate, base::Decimal band) {
  if (squared(exact(rate.lost)) <= squared(exact(band)) * exact(rate.variance)) return Change::within_doubt;
  return rate.lost > Length{} ? Change::lost : Change::grown;
}

double upper_rate(const Place &place) {
  double upper = place.governing()->upper;
  for (const auto *rate : {&place.short_term, &place.long_term})
    if (*rate) upper = std::max(upper, (*rate)->upper);
  return upper;
}

Life life_to(const std::string &criterion, Length limit, Length judged, const Place &place) {
  Life life{.criterion = criterion, .limit = limit, .margin = judged - limit};
  const Rate *rate = place.governing();
  if (rate == nullptr) return life;
  const double left = static_cast<double>(std::max(life.margin, Length{}).nm());
  const auto at = [&](double per_year) -> std::optional<double> {
    if (left == 0) return std::optional<double>(0);
    return per_year > 0 ? std::optional(left / per_year) : std::nullopt;
  };
  life.mean = at(base::approximate(rate->per_year));
  life.upper = at(upper_rate(place));
  return life;
}

assess::Verdict keeps(Length margin, const Rate &rate, Ratio horizon, base::Decimal band) {
  const Exact over = exact(margin) - exact(horizon) * exact(rate.per_year); // what the mean rate leaves above the limit
  if (margin <= Length{} || over < 0) return assess::Verdict::falls_short;
  const Exact share = exact(horizon) * exact(band) / exact(rate.years);
  return squared(over) < squared(share) * exact(rate.variance) ? assess::Verdict::too_close : assess::Verdict::meets;
}

} // namespace strakebook::years
