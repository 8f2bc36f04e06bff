#pragma once

#include <functional>

#include "strakebook/paper/typeset/layout.h"

/// One function a kind of block. Tables, figures and photographs have headers of their own.
namespace strakebook::typeset {

Outcome lay_heading(const content::Heading &heading, const Region &region, const Context &context);
/// Split with at least two lines at either side.
Outcome lay_paragraph(const content::Paragraph &paragraph, const Resume &from, const Region &region,
                      const Context &context);
Outcome lay_list(const content::List &list, const Resume &from, const Region &region, const Context &context);
/// Split between entries; two columns are filled row by row.
Outcome lay_key_values(const content::KeyValues &keys, const Resume &from, const Region &region,
                       const Context &context);
/// Every cell goes on over pages on its own; on the page where it begins, first lines stand on one baseline.
Outcome lay_columns(const content::Columns &columns, const Resume &from, const Region &region,
                    const Context &context);
/// On one page if an empty page can hold it, else split like a sequence.
Outcome lay_together(const content::Together &together, const Resume &from, const Region &region,
                     const Context &context);
Outcome lay_contents(const content::Contents &contents, const Resume &from, const Region &region,
                     const Context &context);
Outcome lay_rule(const content::Rule &rule, const Region &region, const Context &context);
Outcome lay_end_mark(const content::EndMark &mark, const Region &region, const Context &context);

/// The context for the blocks of a cell of columns.
Context cell_context(const Context &columns, std::size_t cell, base::Pt left);

/// Lines from `from.index` on, as many as fit, with at least two at either side of a split.
Outcome split_lines(std::vector<Fragment> lines, const Resume &from, const Region &region);

/// Rows that are never cut, one under the other with `gap`; `make` sets row i.
Outcome split_rows(std::size_t count, base::Pt gap, const std::function<Fragment(std::size_t)> &make,
                   const Resume &from, const Region &region);

/// Sets `right` beside `left` at `x`, both first lines on one baseline.
Fragment beside(Fragment left, Fragment right, base::Pt x);

} // namespace strakebook::typeset
