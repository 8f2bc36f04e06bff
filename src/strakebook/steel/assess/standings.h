#pragma once

#include "strakebook/steel/assess/assessment.h"

namespace strakebook::assess {

/// Sets ZoneResult::measured_by of every zone and the standing of every used mark and every pit. The zones' subjects have been
/// judged before.
void set_standings(Assessment &result, const survey::Survey &survey, const policy::Policy &policy);

} // namespace strakebook::assess
