#pragma once

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/layout.h"

namespace strakebook::typeset {

/// Whether the first line of a block stands on the grid: text in a style that says so, also inside columns.
bool begins_on_grid(const content::Block &block, const style::Style &style);

/// The white from `used` height of a region down to the next half step of the grid, which is counted from the top of
/// the body. 0 where a layout has no grid.
base::Pt down_to_grid(base::Pt used, const Region &region, const style::Style &style);

/// The white between parts of a text on the grid: `gap`, made up to half steps.
base::Pt gap_on_grid(base::Pt gap, const style::TextStyle &text, const style::Style &style);

/// The same fragment with white above it.
Fragment lowered(Fragment fragment, base::Pt by);

} // namespace strakebook::typeset
