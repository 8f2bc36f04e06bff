#include "strakebook/paper/typeset/table_split.h"

namespace strakebook::typeset {
namespace {

/// Rows of one group next to `at`, looking back (step -1, down to `end`) or ahead (step 1, up to `end`).
int rows_before(const std::vector<TableEntry> &entries, std::size_t from, std::size_t at) {
  int rows = 0;
  for (std::size_t i = at; i > from && entries[i - 1].row && entries[i - 1].group == entries[at - 1].group;
       --i)
    ++rows;
  return rows;
}

int rows_after(const std::vector<TableEntry> &entries, std::size_t at) {
  int rows = 0;
  for (std::size_t i = at; i < entries.size() && entries[i].row && entries[i].group == entries[at - 1].group;
       ++i)
    ++rows;
  return rows;
}

} // namespace

std::vector<TableEntry> entries_of(const content::Table &table) {
  std::vector<TableEntry> entries;
  for (const auto &group : table.groups) {
    if (!group.head.empty() || !group.id.empty() || !entries.empty())
      entries.push_back({&group, nullptr});
    for (const auto &row : group.rows)
      entries.push_back({&group, &row});
  }
  return entries;
}

bool may_split(const std::vector<TableEntry> &entries, std::size_t from, std::size_t at, Keep keep) {
  if (at <= from || !entries[at - 1].row)
    return false;
  const int after = rows_after(entries, at);
  if (after == 0)
    return true;
  if (entries[at].row->total || entries[at].group->rows.size() <= static_cast<std::size_t>(keep.group))
    return false;
  return rows_before(entries, from, at) >= keep.rows && after >= keep.rows;
}

std::size_t split_at(const std::vector<TableEntry> &entries, std::size_t from, std::size_t fit, Keep keep,
                     bool empty_page) {
  if (fit == entries.size())
    return fit;
  for (std::size_t at = fit; at > from; --at)
    if (may_split(entries, from, at, keep))
      return at;
  if (!empty_page)
    return from;
  if (keep.group > 0)
    return split_at(entries, from, fit, {keep.rows, 0}, true);
  for (std::size_t at = fit; at > from; --at)
    if (entries[at - 1].row)
      return at;
  return from;
}

} // namespace strakebook::typeset
