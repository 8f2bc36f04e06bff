#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// A block of the zone has a pit.
bool pits_in_blocks(const Zone &zone);

/// Refuses blocks that are not as many as the depths listed, and blocks that cover more than their zone; warns of a pit deeper
/// than the plate was when new.
void check_pit_blocks(const Survey &survey, base::Diagnostics &sink);

} // namespace strakebook::survey
