#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Doublers that lie over each other, and readings from inside that were taken elsewhere: errors. Marks read on a doubler
/// that differ from each other, or from the thickness declared, by more than policy.repeat_spread: a warning to acknowledge.
void check_doublers(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

} // namespace strakebook::survey
