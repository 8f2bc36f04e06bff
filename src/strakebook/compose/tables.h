#pragma once

#include "strakebook/compose/voice.h"

/// Tables, kept short in the chapters.
namespace strakebook::compose {

using Align = content::Column::Align;

content::Column column(std::string head, Align align = Align::left, std::string unit = {});
content::Column stretching(std::string head);
/// A table with its label counted and its caption set.
content::Table labelled_table(const Scope &scope, Numbering &numbering, std::string style, Inlines caption,
                              std::vector<content::Column> columns);
content::Table unlabelled_table(std::string style, std::vector<content::Column> columns);
content::Row row(std::vector<content::Cell> cells, std::string id = {}, base::SourceSpan origin = {});
/// Sums, one a column; an empty one where nothing can be summed.
content::Row total_row(const content::Row &like, const std::vector<std::string> &sums);
/// Rows without a group head.
void add_rows(content::Table &table, std::vector<content::Row> rows);

} // namespace strakebook::compose
