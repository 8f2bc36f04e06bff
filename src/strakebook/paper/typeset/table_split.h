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

/// What stays together where a page ends.
struct Keep {
  int rows = 2;  ///< of a group, with its head and at either side of the end
  int group = 0; ///< a group of no more rows is not split at all
};

/// May a page end before entry `at`, when it begins with entry `from`? No: after a group head, before a total, inside a group
/// that is kept whole, or with fewer than `keep.rows` rows of the group at either side (unless the group has no more).
bool may_split(const std::vector<TableEntry> &entries, std::size_t from, std::size_t at, Keep keep);

/// The last place to split at or before `fit` (entries that fit); `from` if there is none. On an empty page first whole groups
/// and then `keep.rows` give way before the table does: then any row will do.
std::size_t split_at(const std::vector<TableEntry> &entries, std::size_t from, std::size_t fit, Keep keep,
                     bool empty_page);

} // namespace strakebook::typeset
