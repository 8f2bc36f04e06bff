#pragma once

#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// The bar in the left margin of the page beside what changed: from `top`, `height` long, for a region whose
/// left edge is context.indent away from that of the body.
page::Item change_bar(base::Pt top, base::Pt height, const Context &context);

} // namespace strakebook::typeset
