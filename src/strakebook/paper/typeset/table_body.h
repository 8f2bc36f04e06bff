#pragma once

#include <cstddef>
#include <vector>

#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"
#include "strakebook/paper/typeset/table_split.h"

namespace strakebook::typeset {

/// The height that the body of a table may take on a page: where it goes on after the page, and where it ends on it (then
/// its foot is lower).
struct BodyRoom {
  base::Pt going_on, ending;
  bool empty_page = false;
};

struct TableBody {
  Fragment fragment;
  std::size_t end = 0; ///< entries before it are set; where it began: not even the rows that keep together fit
};

/// What stands between caption and foot, from entry `from` on: as many columns abreast as the table's style asks (one, if no
/// cell may then stay unbroken), each with the heads of the table, the head of a group that is cut, its entries and a rule
/// under them. The columns that end a table are about equally high.
TableBody lay_table_body(const content::Table &table, const std::vector<TableEntry> &entries, std::size_t from,
                         base::Pt width, const BodyRoom &room, const Context &context);

} // namespace strakebook::typeset
