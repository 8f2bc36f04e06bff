#pragma once

#include "strakebook/steel/assess/assessment.h"

/// Pitting of a zone by numbers.
namespace strakebook::assess {

/// Extent of a zone's pitting under the extent rule, from what the survey declares and from `spacing`, the least distance
/// between two pits; where that is not known it does not count against "isolated".
Extent pitting_extent(const survey::Zone &zone, bool has_pits, std::optional<Length> spacing, const policy::ExtentRule &rule);

/// Count, spacing, intensity and factor of a zone whose marks and pits have been tallied (`general`, `under_pit`).
Pitting pitting_of(const survey::Survey &survey, const policy::Policy &policy, const survey::Zone &zone, const ZoneResult &tallied);

} // namespace strakebook::assess
