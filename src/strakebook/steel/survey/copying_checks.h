#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Warnings for figures that may have been written down wrongly, each with an id by which it is acknowledged. Of hull plate
/// that was read: repeats further apart than policy.repeat_spread; a reading that another unit would explain, or above the
/// original and the upper side of its delivery tolerance; one that would fit its neighbours with two digits exchanged, that
/// lies further than policy.neighbour_jump from both, or far from the same place on the other side; the same run of readings
/// in two places; a row that fits the other side better when moved by one station. Of pits: a depth that may be what was
/// left. What the thresholds mean: policy::CopyingChecks. At most one of the warnings about its neighbours for each mark.
/// Time: n log n in the marks, for rows of bounded length.
void warn_of_copying(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

} // namespace strakebook::survey
