#pragma once

#include "strakebook/steel/assess/assessment.h"

namespace strakebook::assess {

/// Everything about one zone. Needs the assessment's criteria, workings, marks and pits.
ZoneResult assess_zone(const survey::Survey &survey, const policy::Policy &policy, const Assessment &so_far,
                       const survey::Zone &zone);

} // namespace strakebook::assess
