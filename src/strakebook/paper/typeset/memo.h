#pragma once

#include <map>
#include <utility>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/content/table.h"
#include "strakebook/paper/typeset/table_split.h"

namespace strakebook::typeset {

/// Where the columns of a table stand.
struct TableWidths {
  std::vector<base::Pt> left, width;
  std::vector<base::Pt> point; ///< decimal columns: from the column's left edge to the decimal point
  std::vector<base::Pt> middle; ///< the same to the middle of the column's figures; nought: it has none
  base::Pt total;
  bool squeezed = false; ///< narrower than natural: cells break their lines
  bool too_wide = false; ///< for the width that was given
  bool refers = false;   ///< a cell prints a page number: good for one round only
};

/// What is measured once and used again on the next page, and in the next round if no page number is in it.
/// The key is the table itself (the document does not move while it is set) and the width it was given.
struct Memo {
  std::map<std::pair<const content::Table *, double>, TableWidths> tables;
  std::map<const content::Table *, std::vector<TableEntry>> entries;

  const std::vector<TableEntry> &entries_in(const content::Table &table) {
    const auto found = entries.find(&table);
    return found != entries.end() ? found->second : entries.emplace(&table, entries_of(table)).first->second;
  }

  void begin_round() {
    std::erase_if(tables, [](const auto &entry) { return entry.second.refers; });
  }
};

} // namespace strakebook::typeset
