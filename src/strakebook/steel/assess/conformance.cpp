#include "strakebook/steel/assess/conformance.h"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>
#include <fmt/format.h>

namespace strakebook::assess {

std::optional<double> conformance(Fraction margin_nm, Variance u2) {
  if (u2 == 0) return std::nullopt;
  const double margin = static_cast<double>(margin_nm.num) / static_cast<double>(margin_nm.den);
  return boost::math::cdf(boost::math::normal(), margin / std::sqrt(static_cast<double>(u2)));
}

std::string conformance_text(double probability) {
  constexpr double step = 1e-6; // the least that six decimals can say
  return fmt::format("{:.6f}", std::clamp(probability, step, 1 - step));
}

} // namespace strakebook::assess
