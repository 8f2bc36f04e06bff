#include <algorithm>

#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::policy {

namespace {

constexpr std::int64_t nm_in_mm = 1'000'000, nm_in_m = 1'000'000'000;

Fraction of(const base::Decimal &value) { return fraction(value.ratio()); }
Fraction in_mm(Length length) { return lowest(length.nm(), nm_in_mm); }
Fraction in_m(Length length) { return lowest(length.nm(), nm_in_m); }

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

Length by_draught(const RuleMinimum &rule, const HullFigures &hull) {
  const Fraction before_root = of(rule.draught_factor) * Fraction{hull.spacing.nm(), 1};
  return Length::nanometres(root_up(before_root * before_root * in_m(hull.draught)));
}

RuleWorking working(const RuleMinimum &rule, const HullFigures &hull, base::Decimal strake_factor) {
  const Fraction f = spacing_factor(rule, hull.spacing), b = of(strake_factor);
  const Fraction c = hull.wing_voids ? of(rule.wing_factor) : Fraction{1, 1};
  RuleWorking result{.by_length = by_length(rule, hull.length, f * b * c),
                     .by_draught = by_draught(rule, hull),
                     .f = ratio(f),
                     .b = ratio(b),
                     .c = ratio(c)};
  result.limit = std::max(result.by_length, result.by_draught);
  result.floored = hull.length <= rule.split && result.limit < rule.floor;
  if (result.floored) result.limit = rule.floor;
  return result;
}

} // namespace

RuleWorking rule_minimum(const RuleMinimum &rule, const HullFigures &hull, Plating plating) {
  const RuleWorking plain = working(rule, hull, {.digits = 1, .places = 0});
  if (plating != Plating::bilge) return plain;
  RuleWorking bilge = working(rule, hull, rule.bilge_factor);
  bilge.limit = std::max(bilge.limit, plain.limit);
  return bilge;
}

} // namespace strakebook::policy
