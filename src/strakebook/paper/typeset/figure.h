#pragma once

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/typeset/layout.h"

namespace strakebook::typeset {

/// A figure with caption, panels and notes. `from.index` counts rows of panels already set; caption and notes stand with
/// the first and the last.
Outcome lay_figure(const content::Figure &figure, const Resume &from, const Region &region, const Context &context);

} // namespace strakebook::typeset
