#pragma once

#include <string>

#include "strakebook/base/decimal.h"
#include "strakebook/base/ratio.h"

/// Exact figures as programs are given them.
namespace strakebook::base::exact {

inline std::string text(Length length) { return mm_exact(length); } ///< decimal, in mm
/// "num/den" in lowest terms.
inline std::string text(const Ratio &ratio) {
  const Ratio r = reduced(ratio);
  return std::to_string(r.num) + "/" + std::to_string(r.den);
}

} // namespace strakebook::base::exact
