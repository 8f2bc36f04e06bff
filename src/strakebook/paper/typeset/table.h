#pragma once

#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/layout.h"

namespace strakebook::typeset {

/// A table of few rows (keep_table) that is no higher than the measure "keep-table-height" is not split: it goes to the next page
/// whole. A table from entry `from.index` on (group heads and rows counted in order), split where keep_rows allows:
/// head and units, and the head of a group that is cut, stand again at the top; caption and foot say where it
/// goes on. Notes stand under every part, so that a basis is never a page away from its figure.
Outcome lay_table(const content::Table &table, const Resume &from, const Region &region,
                  const Context &context);

} // namespace strakebook::typeset
