#pragma once

#include <cstdint>
#include <limits>
#include <stdexcept>

namespace strakebook::base {

/// 128 bits, for products of two 64-bit integers.
__extension__ typedef __int128 Wide;

/// The same value in 64 bits; throws std::overflow_error where it does not fit.
inline std::int64_t narrow(Wide value) {
  if (value > std::numeric_limits<std::int64_t>::max() || value < std::numeric_limits<std::int64_t>::min())
    throw std::overflow_error("a figure outside the range of exact arithmetic");
  return static_cast<std::int64_t>(value);
}

/// 10 to the power of n; 0 <= n <= 18, else std::overflow_error.
inline std::int64_t power_of_ten(int n) {
  if (n < 0 || n > 18)
    throw std::overflow_error("more decimals than exact arithmetic has room for");
  std::int64_t power = 1;
  for (int i = 0; i < n; ++i)
    power *= 10;
  return power;
}

} // namespace strakebook::base
