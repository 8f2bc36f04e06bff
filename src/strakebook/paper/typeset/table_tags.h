#pragma once

#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/context.h"

/// The elements of a table. `table` is the context of the table itself; rows count from 1 in their group, 0 is its head.
namespace strakebook::typeset {

/// The row of the column heads.
Context head_row_context(const Context &table);

/// A row of a group; without one, the row of the group's head.
Context body_row_context(const Context &table, const content::Table &of, const content::RowGroup &group,
                         const content::Row *row);

/// A cell of a row: the first one names its row.
Context body_cell_context(const Context &row, std::size_t column, int across);

/// The head over a column; one over a whole group speaks for the columns under it.
Context column_head_context(const Context &row, std::size_t column, std::size_t across);

} // namespace strakebook::typeset
