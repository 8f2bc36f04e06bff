#include "strakebook/steel/assess/doubt.h"

namespace strakebook::assess {

using policy::product;
using policy::square;

namespace {

Fraction band_squared(const Doubt &doubt) {
  const Fraction factor = policy::fraction(doubt.factor.ratio());
  return factor * factor * Fraction{doubt.u2, 1};
}

bool reaches(Fraction margin, Fraction w2) { // |margin| >= w
  return product(square(margin.num), w2.den) >= product(w2.num, square(margin.den));
}

} // namespace

Variance variance(Length u) { return square(u.nm()); }

Length uncertainty(const Doubt &doubt) { return Length::nanometres(policy::root_up({doubt.u2, 1})); }

Length band(const Doubt &doubt) {
  return Length::nanometres(policy::root_up(band_squared(doubt)));
}

Verdict judged(Fraction margin_nm, const Doubt &doubt) {
  if (!reaches(margin_nm, band_squared(doubt))) return Verdict::too_close;
  return margin_nm.num >= 0 ? Verdict::meets : Verdict::falls_short;
}

Bare bare(Fraction margin_nm) {
  if (margin_nm.num == 0) return Bare::at_limit;
  return margin_nm.num > 0 ? Bare::inside : Bare::over;
}

} // namespace strakebook::assess
