#pragma once

#include <compare>
#include <cstdint>

#include "strakebook/base/length.h"

namespace strakebook::base {

/// An exact fraction; den > 0. Compared by cross-multiplication in 128 bits, never through a double.
struct Ratio {
  std::int64_t num = 0;
  std::int64_t den = 1;

  std::strong_ordering operator<=>(const Ratio &o) const;
  bool operator==(const Ratio &o) const { return (*this <=> o) == 0; }
};

/// The same fraction in lowest terms. den <= 0 throws std::domain_error.
Ratio reduced(Ratio r);

/// part / whole as a fraction in lowest terms. whole <= 0 throws std::domain_error.
Ratio ratio_of(Length part, Length whole);

/// whole * r, rounded towards positive infinity to the next nanometre (so a limit is never lowered by rounding).
Length scaled_up(Length whole, Ratio r);

/// 1 - r.
Ratio complement(Ratio r);

} // namespace strakebook::base
