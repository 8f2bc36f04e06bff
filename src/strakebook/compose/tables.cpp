#include "strakebook/compose/tables.h"

namespace strakebook::compose {

content::Column column(std::string head, Align align, std::string unit) {
  return {.align = align, .head = std::move(head), .unit = std::move(unit), .stretch = false, .measure = {}};
}

content::Column stretching(std::string head) {
  return {.align = Align::left, .head = std::move(head), .unit = {}, .stretch = true, .measure = {}};
}

content::Table labelled_table(const Scope &scope, Numbering &numbering, std::string style, Inlines caption,
                              std::vector<content::Column> columns) {
  content::Table table;
  table.style = std::move(style);
  table.label = next_table(scope, numbering);
  table.caption = std::move(caption);
  table.columns = std::move(columns);
  return table;
}

content::Table unlabelled_table(std::string style, std::vector<content::Column> columns) {
  content::Table table;
  table.style = std::move(style);
  table.columns = std::move(columns);
  table.unlabelled = true;
  return table;
}

content::Row row(std::vector<content::Cell> cells, std::string id, base::SourceSpan origin) {
  return {.id = std::move(id), .cells = std::move(cells), .origin = std::move(origin)};
}

content::Row total_row(const content::Row &like, const std::vector<std::string> &sums) {
  std::vector<content::Cell> cells;
  for (const auto &sum : sums) cells.push_back(cell(content::strong(sum)));
  cells.resize(like.cells.size(), cell(std::string()));
  auto out = row(std::move(cells));
  out.total = true;
  return out;
}

void add_rows(content::Table &table, std::vector<content::Row> rows) {
  table.groups.push_back({.head = {}, .id = {}, .rows = std::move(rows)});
}

} // namespace strakebook::compose
