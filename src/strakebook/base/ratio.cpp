#include "strakebook/base/ratio.h"

#include <numeric>
#include <stdexcept>

#include "strakebook/base/wide.h"

namespace strakebook::base {

std::strong_ordering Ratio::operator<=>(const Ratio &o) const {
  return static_cast<Wide>(num) * o.den <=> static_cast<Wide>(o.num) * den;
}

Ratio reduced(Ratio r) {
  if (r.den <= 0)
    throw std::domain_error("a fraction needs a denominator above zero");
  const std::int64_t common = std::gcd(r.num, r.den);
  return {r.num / common, r.den / common};
}

Ratio ratio_of(Length part, Length whole) { return reduced({part.nm(), whole.nm()}); }

Length scaled_up(Length whole, Ratio r) {
  if (r.den <= 0)
    throw std::domain_error("a fraction needs a denominator above zero");
  const Wide product = static_cast<Wide>(whole.nm()) * r.num;
  // Division cuts towards zero, which is already upwards for what is below zero.
  const Wide cut = product / r.den;
  return Length::nanometres(narrow(product % r.den > 0 ? cut + 1 : cut));
}

Ratio complement(Ratio r) { return {narrow(static_cast<Wide>(r.den) - r.num), r.den}; }

} // namespace strakebook::base
