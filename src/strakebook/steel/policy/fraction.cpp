#include "strakebook/steel/policy/fraction.h"

#include <stdexcept>

namespace strakebook::policy {

namespace {

[[noreturn]] void too_large() { throw std::overflow_error("a figure too large for exact arithmetic"); }

Wide divisor(Wide a, Wide b) {
  if (a < 0) a = -a;
  while (b != 0) {
    const Wide rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

} // namespace

Wide sum(Wide a, Wide b) {
  Wide result = 0;
  if (__builtin_add_overflow(a, b, &result)) too_large();
  return result;
}

Wide product(Wide a, Wide b) {
  Wide result = 0;
  if (__builtin_mul_overflow(a, b, &result)) too_large();
  return result;
}

Fraction lowest(Wide num, Wide den) {
  const Wide common = divisor(num, den);
  return {num / common, den / common};
}

Fraction fraction(base::Ratio r) { return lowest(r.num, r.den); }

Fraction operator+(Fraction a, Fraction b) {
  const Wide common = divisor(a.den, b.den);
  const Wide scale = b.den / common;
  return lowest(sum(product(a.num, scale), product(b.num, a.den / common)), product(a.den, scale));
}

Fraction operator*(Fraction a, Fraction b) {
  // Cancelled crosswise first, so that only a result that is itself too large overflows.
  const Fraction left = lowest(a.num, b.den), right = lowest(b.num, a.den);
  return {product(left.num, right.num), product(left.den, right.den)};
}

std::int64_t rounded_up(Fraction value) {
  const Wide whole = value.num / value.den;
  return base::narrow(value.num % value.den > 0 ? whole + 1 : whole);
}

std::int64_t root_up(Fraction value) {
  // x * x is whole, so it reaches the value exactly when it reaches the value rounded up.
  const Wide whole = value.num / value.den, target = value.num % value.den > 0 ? whole + 1 : whole;
  Wide low = 0, high = 1;
  while (square(high) < target) high = product(high, 2);
  while (low < high) {
    const Wide middle = low + (high - low) / 2;
    if (square(middle) >= target) high = middle;
    else low = middle + 1;
  }
  return base::narrow(low);
}

base::Ratio ratio(Fraction value) { return {base::narrow(value.num), base::narrow(value.den)}; }

} // namespace strakebook::policy
