#pragma once

#include "strakebook/base/decimal.h"
#include "strakebook/steel/policy/fraction.h"

/// What the rule formulas share.
namespace strakebook::policy {

inline constexpr std::int64_t nm_in_mm = 1'000'000, nm_in_m = 1'000'000'000;

inline Fraction of(const base::Decimal &value) { return fraction(value.ratio()); }
inline Fraction in_mm(base::Length length) { return lowest(length.nm(), nm_in_mm); }
inline Fraction in_m(base::Length length) { return lowest(length.nm(), nm_in_m); }

/// factor a sqrt(T), T in m, in the unit of a; rounded up to the next nanometre.
inline base::Length by_draught(const base::Decimal &factor, base::Length spacing, base::Length draught) {
  const Fraction before_root = of(factor) * Fraction{spacing.nm(), 1};
  return base::Length::nanometres(root_up(before_root * before_root * in_m(draught)));
}

} // namespace strakebook::policy
