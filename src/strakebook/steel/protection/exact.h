#pragma once

#include <boost/multiprecision/cpp_int.hpp>

#include "strakebook/base/decimal.h"

/// Exact fractions of any length: a product of seven decimals does not fit into 128 bits.
namespace strakebook::protection {

using Exact = boost::multiprecision::cpp_rational;

inline Exact exact(const base::Decimal &decimal) {
  const base::Ratio ratio = decimal.ratio();
  return {boost::multiprecision::cpp_int(ratio.num), boost::multiprecision::cpp_int(ratio.den)};
}
inline Exact share(const base::Decimal &percent) { return exact(percent) / 100; }
inline double rounded(const Exact &value) { return value.convert_to<double>(); }
inline double rounded(const base::Decimal &value) { return rounded(exact(value)); }

} // namespace strakebook::protection
