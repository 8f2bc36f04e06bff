#pragma once

#include <boost/multiprecision/cpp_int.hpp>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/policy/fraction.h"

/// Exact fractions of any size, for products of so many figures that 128 bits do not hold them.
namespace strakebook::policy {

using Exact = boost::multiprecision::cpp_rational;

inline Exact exact(Fraction value) {
  return {boost::multiprecision::cpp_int(value.num), boost::multiprecision::cpp_int(value.den)};
}
inline Exact exact(base::Ratio value) { return exact(Fraction{value.num, value.den}); }
inline Exact exact(const base::Decimal &value) { return exact(value.ratio()); }
inline Exact exact(base::Length nm) { return Exact(nm.nm()); } ///< in nanometres

} // namespace strakebook::policy
