#include <algorithm>

#include "strakebook/steel/policy/formula.h"
#include "strakebook/steel/policy/policy.h"

namespace strakebook::policy {

namespace {

/// factor f sqrt(L), L in m, result in mm; rounded up to the next nanometre.
Length by_waterline(const PassengerMinimum &rule, Length waterline, Fraction f) {
  const Fraction before_root = of(rule.length_factor) * f * Fraction{nm_in_mm, 1};
  return Length::nanometres(root_up(before_root * before_root * in_m(waterline)));
}

} // namespace

RuleWorking passenger_minimum(const PassengerMinimum &rule, const HullFigures &hull) {
  const Length spacing = std::max(hull.spacing, rule.least_spacing);
  const Fraction f = Fraction{1, 1} + of(rule.spacing_slope) * in_mm(spacing - rule.spacing);
  RuleWorking result{.by_length = by_waterline(rule, hull.length, f),
                     .by_draught = by_draught(rule.draught_factor, spacing, hull.draught),
                     .f = ratio(f),
                     .b = {1, 1},
                     .c = {1, 1},
                     .spacing = spacing};
  result.limit = std::max(result.by_length, result.by_draught);
  result.floored = result.limit < rule.floor;
  if (result.floored) result.limit = rule.floor;
  return result;
}

} // namespace strakebook::policy
