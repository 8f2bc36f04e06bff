#pragma once

#include <optional>
#include <vector>

#include "strakebook/steel/assess/criteria.h"
#include "strakebook/steel/robustness/robustness.h"

/// How one combination is tried at a place, and which combinations a zone's range holds.
namespace strakebook::robustness {

/// The lowest plate and the worst pit of a zone as they are judged, in the order of its subjects.
std::vector<assess::Spot> spots_of(const survey::Survey &survey, const assess::Assessment &assessment,
                                   const policy::Policy &policy, const assess::ZoneResult &zone);

/// What a zone is measured by, taken apart. A share goes with its original; an absolute limit, or one that a formula gives, has none.
struct Used {
  std::optional<Length> limit;
  std::optional<Ratio> loss;
  std::optional<Length> original; ///< the nominal; absent on a weak basis
};
Used used_in(const survey::Zone &zone, const assess::Assessment &assessment, const assess::ZoneResult &result);

/// The rule's ranges, with what is used among them, and the originals that can be held.
Ranges ranges_for(const survey::Zone &zone, const policy::Policy &policy, const assess::ZoneResult &result, const Used &used);

assess::Fraction left_of(Length original, Ratio loss); ///< in nanometres
inline assess::Fraction left_of(Length limit) { return {limit.nm(), 1}; }

/// The place against a least remaining thickness, with its doubt taken `times`.
Tried try_at(const assess::Spot &spot, assess::Fraction least_nm, base::Decimal times);

inline constexpr base::Decimal as_it_is{1, 0}; ///< the doubt

} // namespace strakebook::robustness
