#pragma once

#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// The bar in the left margin of the page beside what changed: from `top`, `height` long, for a region whose
/// left edge is context.indent away from that of the body.
page::Item change_bar(base::Pt top, base::Pt height, const Context &context);

/// `part` with such a bar over its whole height, where `changed`.
Fragment barred(Fragment part, bool changed, const Context &context);

/// The short bar at the left of a sign of a figure, whose middle is at `at` and which is `size` high.
page::Item place_bar(base::Point at, base::Pt size, const style::Style &style);

} // namespace strakebook::typeset
