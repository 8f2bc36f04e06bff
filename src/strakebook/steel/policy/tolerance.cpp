#include <algorithm>

#include "strakebook/steel/policy/policy.h"

namespace strakebook::policy {

const ToleranceBand *band_for(const Tolerance &tolerance, Length nominal) {
  const auto found = std::ranges::find_if(
      tolerance.bands, [&](const ToleranceBand &band) { return band.from <= nominal && nominal < band.to; });
  return found == tolerance.bands.end() ? nullptr : &*found;
}

} // namespace strakebook::policy
