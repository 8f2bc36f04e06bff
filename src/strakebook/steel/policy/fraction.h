#pragma once

#include <cstdint>

#include "strakebook/base/ratio.h"
#include "strakebook/base/wide.h"

/// Exact arithmetic in 128 bits for what does not fit into 64: products of limits and squares of doubts. Every operation
/// throws std::overflow_error rather than give a wrong figure.
namespace strakebook::policy {

using base::Wide;

Wide sum(Wide a, Wide b);
Wide product(Wide a, Wide b);
inline Wide square(Wide a) { return product(a, a); }

/// An exact fraction in lowest terms, den > 0.
struct Fraction {
  Wide num = 0;
  Wide den = 1;
};

Fraction lowest(Wide num, Wide den); ///< num / den in lowest terms; den > 0
Fraction fraction(base::Ratio r);
Fraction operator+(Fraction a, Fraction b);
Fraction operator*(Fraction a, Fraction b);

std::int64_t rounded_up(Fraction value); ///< least whole number that is not below it

/// The least whole x >= 0 with x * x >= value: the square root, rounded up.
std::int64_t root_up(Fraction value);

base::Ratio ratio(Fraction value); ///< the same in 64 bits

} // namespace strakebook::policy
