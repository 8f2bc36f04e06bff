#pragma once

#include "strakebook/compose/crossing.h"
#include "strakebook/compose/results_parts.h"

/// The readings table in its two forms: one column a figure, or few columns so that it may stand twice beside itself.
namespace strakebook::compose {

/// What is the same for the whole table, found once.
struct ReadingsView {
  explicit ReadingsView(const Scope &scope);

  MapPlaces map;
  PhotosAt photos;
  ItemsAt items;
  Length widest;           ///< plate of this survey
  bool with_units = false; ///< some figure of this survey was not noted in mm
  bool low = false;        ///< the table has a column for the low side
  bool cited = false;      ///< one for the recommendations that rest on a mark
  bool pictured = false;   ///< and one for photographs, where any was taken at a mark
};

/// What is the same for every mark of a row, found once.
struct RowView {
  const survey::Row &row;
  const survey::Zone &zone;
  std::optional<DrawnLimit> limit;
  bool weak = false; ///< the original is told and not proved: neither it nor a loss is printed
  bool told = false; ///< the original is what somebody told, and its losses with it
};

/// One mark and what is said of it.
struct MarkView {
  const ReadingsView &table;
  const RowView &row;
  const survey::Mark &mark;
  const assess::MarkResult &result;
};

std::vector<content::Column> wide_columns(const Scope &scope, const ReadingsView &table);
content::Row wide_row(const Scope &scope, const MarkView &view);

/// Whether a table with fewer columns says the same: few figures at a mark; where the mark is used the least of them, as it
/// was displayed, is what remains, and no words stand there but "lowest of row".
bool may_be_narrow(const Scope &scope, const ReadingsView &table);
std::vector<content::Column> narrow_columns(const Scope &scope, const ReadingsView &table);
content::Row narrow_row(const Scope &scope, const MarkView &view);

/// "3.4  3.5" as they were displayed, with their units where `with_units`; a dash for none.
std::string displayed(const Scope &scope, const survey::Mark &mark, bool with_units);
/// The same in mm.
std::string displayed_mm(const Scope &scope, const survey::Mark &mark);
/// Why a mark is not used, or what else is to be known of it; empty where there is nothing.
Inlines status_of(const Scope &scope, const survey::Mark &mark, const assess::MarkResult &result);
/// The plate in section.
content::Cell glyph_cell(const Scope &scope, const MarkView &view);
/// The columns at the right: photographs and recommendations, where any mark has some.
void add_crossing_columns(std::vector<content::Column> &to, const Scope &scope, const ReadingsView &table);
void add_crossing_cells(std::vector<content::Cell> &to, const Scope &scope, const MarkView &view);

} // namespace strakebook::compose
