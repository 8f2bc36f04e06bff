#pragma once

#include "strakebook/steel/survey/reading.h"

namespace strakebook::survey {

/// Looks every collected name up: the house's words in the policy (unknown_word), the survey's own in the
/// survey (dangling_reference), each with the nearest known one.
void resolve(Reading &reading, const policy::Policy &policy);

} // namespace strakebook::survey
