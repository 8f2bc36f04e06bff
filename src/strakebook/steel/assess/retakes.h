#pragma once

#include "strakebook/steel/assess/assessment.h"

namespace strakebook::assess {

/// The indicative marks and pits that lie near a limit which applies to them: the figure displayed or the figure judged within
/// the policy's retake_within of it, or the limit between the two. The zones have been assessed before.
std::vector<Retake> retakes(const Assessment &so_far, const survey::Survey &survey, const policy::Policy &policy);

} // namespace strakebook::assess
