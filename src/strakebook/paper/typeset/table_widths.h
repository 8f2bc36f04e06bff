#pragma once

#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"
#include "strakebook/paper/typeset/memo.h"

namespace strakebook::typeset {

/// Columns of a table in `width`: fixed by measure, natural (as wide as the widest cell, head or unit), or
/// stretched to what is left. Natural columns that are too wide together break their lines; what cannot be
/// broken is reported. Measured once a round for a table and a width.
const TableWidths &table_widths(const content::Table &table, base::Pt width, const Context &context);

/// Whether every column finds its natural width in `width`, so that no cell has to break its lines.
bool fits_unbroken(const content::Table &table, base::Pt width, const Context &context);

/// Width of `across` columns from `first` on, with the gaps between them.
base::Pt span_width(const TableWidths &widths, std::size_t first, int across);

/// Where the decimal point of the first number of a line is, or would be: from its left edge; nothing without
/// a digit.
std::optional<base::Pt> point_position(const Fragment &line);

/// The inlines of a cell with its sign before them.
content::Inlines cell_inlines(const content::Cell &cell);

} // namespace strakebook::typeset
