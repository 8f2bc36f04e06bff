#include <algorithm>

#include "strakebook/steel/policy/formula.h"
#include "strakebook/steel/policy/policy.h"

namespace strakebook::policy {

namespace {

Fraction spacing_factor(const RuleMinimum &rule, Length spacing) {
  if (spacing <= rule.spacing) return {1, 1};
  return Fraction{1, 1} + of(rule.spacing_slope) * in_mm(spacing - rule.spacing);
}

Length by_length(const RuleMinimum &rule, Length length, Fraction factors) {
  const bool shorter = length <= rule.split;
  const Fraction constant = of(shorter ? rule.shorter_constant : rule.longer_constant);
  const Fraction slope = of(shorter ? rule.shorter_slope : rule.longer_slope);
  const Fraction mm = factors * (constant + slope * in_m(length));
  return Length::nanometres(rounded_up(mm * Fraction{nm_in_mm, 1}));
}

RuleWorking working(const RuleMinimum &rule, const HullFigures &hull, base::Decimal strake_factor) {
  const Fraction f = spacing_factor(rule, hull.spacing), b = of(strake_factor);
  const Fraction c = hull.wing_voids ? of(rule.wing_factor) : Fraction{1, 1};
  RuleWorking result{.by_length = by_length(rule, hull.length, f * b * c),
                     .by_draught = by_draught(rule.draught_factor, hull.spacing, hull.draught),
                     .f = ratio(f),
                     .b = ratio(b),
                     .c = ratio(c),
                     .spacing = hull.spacing};
  result.limit = std::max(result.by_length, result.by_draught);
  result.floored = hull.length <= rule.split && result.limit < rule.floor;
  if (result.floored) result.limit = rule.floor;
  return result;
}

/// What the other readings make of a limit that is judged by; a reading that makes no difference is left out.
std::vector<OtherReading> others(const RuleMinimum &rule, Length limit, bool bilge, bool has_floor) {
  std::vector<OtherReading> found;
  const auto add = [&](RuleReading reading, Length reads) {
    if (reads != limit) found.push_back({reading, reads});
  };
  if (bilge && has_floor) {
    const Fraction times_b = of(rule.bilge_factor) * Fraction{rule.floor.nm(), 1};
    add(RuleReading::floor_times_b, std::max(limit, Length::nanometres(rounded_up(times_b))));
  }
  const Length worn = base::scaled_up(limit, base::complement(rule.local_wear));
  add(RuleReading::local_wear, std::min(limit, std::max(worn, rule.floor)));
  if (worn < rule.floor) add(RuleReading::local_wear_under_floor, worn);
  return found;
}

} // namespace

RuleWorking rule_minimum(const RuleMinimum &rule, const HullFigures &hull, Plating plating) {
  const bool bilge = plating == Plating::bilge;
  RuleWorking result = working(rule, hull, {.digits = 1, .places = 0});
  if (bilge) {
    const Length plain = result.limit;
    result = working(rule, hull, rule.bilge_factor);
    result.limit = std::max(result.limit, plain);
  }
  result.others = others(rule, result.limit, bilge, hull.length <= rule.split);
  return result;
}

} // namespace strakebook::policy
