#pragma once

#include "strakebook/steel/assess/assessment.h"

namespace strakebook::assess {

/// Every value that the survey leaves open and that its results rest on. Needs the workings of the rule formulas and the gauges.
std::vector<Default> defaults_used(const survey::Survey &survey, const Assessment &so_far);

} // namespace strakebook::assess
