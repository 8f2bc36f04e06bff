#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Warnings for figures that may have been written down wrongly: a reading that differs from both its
/// neighbours in the row by more than policy.neighbour_jump; repeats further apart than policy.repeat_spread;
/// a reading on hull plate above the original thickness and the upper side of its delivery tolerance (where
/// none is named, of the widest that the policy knows for it). A mark without a usable reading is not judged.
void warn_of_transcription(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

} // namespace strakebook::survey
