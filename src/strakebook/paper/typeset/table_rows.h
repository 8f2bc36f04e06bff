#pragma once

#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"
#include "strakebook/paper/typeset/memo.h"

namespace strakebook::typeset {

/// Body text style in the three alignments, made once for a part of a table.
struct CellLooks {
  style::TextStyle left, right, centre;
  const style::TextStyle &of(content::Column::Align align) const;
};
CellLooks cell_looks(const style::TextStyle &base);

/// One row without its rule: cells on one first baseline, at least a row pitch high; anchor and change bar
/// included. `context` is that of the row.
Fragment set_row(const content::Table &table, const content::Row &row, const TableWidths &widths,
                 const CellLooks &looks, const Context &context);

/// Heads of the columns with their units, between the two rules of the head.
Fragment set_table_head(const content::Table &table, const TableWidths &widths, const Context &context);

/// The head of a group over its rule, `context` being that of its row; `continued` when its rows began on an earlier page.
Fragment set_group_head(const content::Table &table, const content::RowGroup &group,
                        const TableWidths &widths, bool continued, const Context &context);

} // namespace strakebook::typeset
