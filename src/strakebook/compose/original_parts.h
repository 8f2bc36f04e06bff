#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// A zone whose original rests on a weak basis: which plate sizes fit its readings, under which tolerance, and what follows.
std::vector<content::Block> weak_zone(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const assess::ZoneResult &result);

} // namespace strakebook::compose
