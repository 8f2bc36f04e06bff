#include "strakebook/paper/content/table_difference.h"

#include <algorithm>
#include <map>
#include <set>

#include "strakebook/paper/content/difference.h"
#include "strakebook/paper/content/said.h"

namespace strakebook::content {
namespace {

using Texts = std::vector<std::string>;

/// Heads of columns, those that stand twice told apart.
Texts keys_of(const Table &table) {
  Texts keys;
  std::map<std::string, int> seen;
  for (const auto &column : table.columns) {
    const std::string head = column.head + '\n' + column.unit;
    keys.push_back(head + '\n' + std::to_string(seen[head]++));
  }
  return keys;
}

/// What each row says, column by column; nothing where a cell has nothing to say.
using Cells = std::map<std::string, std::string>;

Cells cells_of(const Row &row, const Texts &keys) {
  Cells out;
  std::size_t column = 0;
  for (const auto &cell : row.cells) {
    if (column < keys.size() && says_anything(cell))
      out[keys[column]] = said(cell);
    column += static_cast<std::size_t>(std::max(1, cell.across));
  }
  return out;
}

std::vector<const Row *> rows_of(const Table &table) {
  std::vector<const Row *> rows;
  for (const auto &group : table.groups)
    for (const auto &row : group.rows)
      rows.push_back(&row);
  return rows;
}

/// Columns of `table` that the other does not have and that most of its rows have something in: another form of the table.
std::set<std::string> other_form(const Table &table, const Texts &own, const Texts &others) {
  std::set<std::string> out;
  const auto rows = rows_of(table);
  for (const auto &key : own) {
    if (std::ranges::find(others, key) != others.end())
      continue;
    const auto filled = std::ranges::count_if(rows, [&](const Row *row) { return cells_of(*row, own).contains(key); });
    if (static_cast<std::size_t>(filled) * 2 > rows.size())
      out.insert(key);
  }
  return out;
}

/// A row as it is compared.
std::string compared(const Row &row, const Texts &keys, const std::set<std::string> &left_out) {
  std::string out = row.id + '\n';
  for (const auto &[key, text] : cells_of(row, keys))
    if (!left_out.contains(key))
      out += key + '\n' + text + '\n';
  return out;
}

struct Side {
  std::vector<const Row *> rows;
  Texts texts; ///< of each row, as it is compared
};

Side side_of(const Table &table, const Texts &keys, const std::set<std::string> &left_out) {
  Side side{rows_of(table), {}};
  for (const auto *row : side.rows)
    side.texts.push_back(compared(*row, keys, left_out));
  return side;
}

/// Of each row of `now`, whether `before` has one that says the same; rows with an id may stand in another order.
std::vector<bool> kept_rows(const Side &now, const Side &before) {
  const auto in_order = matched(now.texts, before.texts);
  const std::set<std::string> all(before.texts.begin(), before.texts.end());
  std::vector<bool> kept;
  for (std::size_t i = 0; i < now.rows.size(); ++i)
    kept.push_back(now.rows[i]->id.empty() ? in_order[i].has_value() : all.contains(now.texts[i]));
  return kept;
}

/// Whether a row of `before` is gone: one whose id is no longer there, or fewer of those that have none.
bool rows_gone(const Side &now, const Side &before) {
  std::set<std::string> ids;
  for (const auto *row : now.rows)
    ids.insert(row->id);
  const auto unnamed = [](const Row *row) { return row->id.empty(); };
  return std::ranges::any_of(before.rows, [&](const Row *row) { return !row->id.empty() && !ids.contains(row->id); }) ||
         std::ranges::count_if(before.rows, unnamed) > std::ranges::count_if(now.rows, unnamed);
}

void mark_group_heads(Table &now, const Table &before) {
  std::map<std::string, std::string> heads;
  const auto name = [](const Table &table, std::size_t i) {
    return table.groups[i].id.empty() ? std::to_string(i) : table.groups[i].id;
  };
  for (std::size_t i = 0; i < before.groups.size(); ++i)
    heads.emplace(name(before, i), said(before.groups[i].head));
  for (std::size_t i = 0; i < now.groups.size(); ++i) {
    auto &group = now.groups[i];
    const auto found = heads.find(name(now, i));
    group.head_changed = !group.head.empty() && (found == heads.end() || found->second != said(group.head));
  }
}

} // namespace

void mark_table(Table &now, const Table &before) {
  const Texts keys = keys_of(now), keys_before = keys_of(before);
  auto left_out = other_form(now, keys, keys_before);
  left_out.merge(other_form(before, keys_before, keys));
  const Side side = side_of(now, keys, left_out), side_before = side_of(before, keys_before, left_out);
  const auto kept = kept_rows(side, side_before);
  now.caption_changed = said(now.caption) != said(before.caption) || keys != keys_before || rows_gone(side, side_before);
  std::size_t at = 0;
  for (auto &group : now.groups)
    for (auto &row : group.rows)
      row.changed = !kept[at++];
  mark_group_heads(now, before);
  now.changed_notes = unmatched(now.notes, before.notes);
}

} // namespace strakebook::content
