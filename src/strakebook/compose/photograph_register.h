#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// Every photograph with the digest of its file, its pixels and the page it stands on, as a table "table/photographs".
content::Block photograph_register(const Scope &scope);

} // namespace strakebook::compose
