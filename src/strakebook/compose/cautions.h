#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// Every caution that applies, with its source, in two columns; the source that most of them share is said once, before.
std::vector<content::Block> cautions(const Scope &scope);

} // namespace strakebook::compose
