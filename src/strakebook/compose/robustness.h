#pragma once

#include "strakebook/compose/decision.h"

namespace strakebook::compose {

/// Whether the zone's verdict stays when limit, original and doubt move inside the house's ranges: a grid where any combination
/// gives another verdict, and a computed sentence. Empty where no criterion applies.
std::vector<content::Block> robustness_of(const Scope &scope, Numbering &numbering, const Judged &judged);

} // namespace strakebook::compose
