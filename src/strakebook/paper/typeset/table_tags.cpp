#include "strakebook/paper/typeset/table_tags.h"

namespace strakebook::typeset {

using page::Role;

Context head_row_context(const Context &table) {
  return tagged(tagged(table, {.role = Role::table_head}), {.role = Role::table_row});
}

Context body_row_context(const Context &table, const content::Table &of, const content::RowGroup &group,
                         const content::Row *row) {
  const Context body = tagged(table, {.role = Role::table_body, .key = &group - of.groups.data()});
  return tagged(body, {.role = Role::table_row, .key = row == nullptr ? 0 : row - group.rows.data() + 1});
}

Context body_cell_context(const Context &row, std::size_t column, int across) {
  const bool names_row = column == 0;
  return tagged(row, {.role = names_row ? Role::head_cell : Role::cell,
                      .key = static_cast<std::int64_t>(column),
                      .across = across,
                      .heads = names_row ? page::Heads::row : page::Heads::none});
}

Context column_head_context(const Context &row, std::size_t column, std::size_t across) {
  return tagged(row, {.role = Role::head_cell,
                      .key = static_cast<std::int64_t>(column),
                      .across = static_cast<int>(across),
                      .heads = page::Heads::column});
}

} // namespace strakebook::typeset
