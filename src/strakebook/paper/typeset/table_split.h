#pragma once

#include <cstddef>
#include <vector>

#include "strakebook/paper/content/table.h"

namespace strakebook::typeset {

/// A line of a table body: the head of a group (row null), or a row.
struct TableEntry {
  const content::RowGroup *group = nullptr;
  const content::Row *row = nullptr;
};

/// Group heads and rows in order. A group without a head has an entry all the same if another stands before
/// it: a rule.
std::vector<TableEntry> entries_of(const content::Table &table);

/// May a page end before entry `at`, when it begins with entry `from`? No: after a group head, or with fewer
/// than `keep_rows` rows of the group at either side (unless the group has no more).
bool may_split(const std::vector<TableEntry> &entries, std::size_t from, std::size_t at, int keep_rows);

/// The last place to split at or before `fit` (entries that fit); `from` if there is none. On an empty page
/// keep_rows gives way before the table does: then any row will do.
std::size_t split_at(const std::vector<TableEntry> &entries, std::size_t from, std::size_t fit, int keep_rows,
                     bool empty_page);

} // namespace strakebook::typeset
