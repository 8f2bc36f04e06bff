#include "strakebook/compose/low_side.h"
#include "strakebook/compose/results_readings.h"
#include "strakebook/compose/tables.h"

/// The readings table with a column for each figure.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

content::Cell original_cell(const Scope &scope, const RowView &view) {
  if (view.weak) return dash_cell(scope);
  return cell(content::soft(base::mm_exact(view.zone.original.nominal.value, 1)));
}

} // namespace

std::vector<content::Column> wide_columns(const Scope &scope, const ReadingsView &table) {
  const std::string mm = scope.say("voice.mm");
  std::vector<content::Column> columns = {column(scope.say("results.station"), Align::right, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("results.displayed"), Align::right, table.with_units ? scope.say("results.as-noted") : mm),
          column(scope.say("results.remaining"), Align::decimal, mm),
          column(scope.say("results.original"), Align::decimal, mm),
          column(scope.say("results.loss"), Align::decimal, mm),
          column(scope.say("results.share"), Align::decimal, scope.say("results.share-unit")),
          column(scope.say("results.over-limit"), Align::decimal, mm),
          column(scope.say("results.section"), Align::left, scope.say("results.section-unit")),
          stretching(scope.say("results.status"))};
  add_crossing_columns(columns, scope, table);
  constexpr std::ptrdiff_t after_displayed = 2, after_remaining = 3;
  if (table.low) columns.insert(columns.begin() + after_remaining, column(scope.say("results.low"), Align::decimal, mm));
  if (table.with_units) columns.insert(columns.begin() + after_displayed, column(scope.say("results.converted"), Align::right, mm));
  return columns;
}

content::Row wide_row(const Scope &scope, const MarkView &view) {
  const auto &[table, line, mark, result] = view;
  std::vector<content::Cell> cells = {cell(link(table.map.of(mark), untorn(mark.station.raw))), cell(content::soft(displayed(scope, mark, table.with_units)))};
  if (table.with_units) cells.push_back(cell(content::soft(displayed_mm(scope, mark))));
  if (result.used) {
    cells.push_back(cell(content::strong(remaining_text(scope, line.zone.id, result.remaining))));
    if (table.low) cells.push_back(result.low ? cell(low_text(scope, line.zone.id, *result.low)) : dash_cell(scope));
    cells.push_back(original_cell(scope, line));
    cells.push_back(line.weak ? dash_cell(scope) : cell(short_mm(result.loss)));
    cells.push_back(share_cell(scope, result.share));
    cells.push_back(margin_cell(scope, result.standing));
  } else {
    cells.push_back(dash_cell(scope));
    if (table.low) cells.push_back(dash_cell(scope));
    cells.push_back(original_cell(scope, line));
    for (int i = 0; i < 3; ++i) cells.push_back(dash_cell(scope));
  }
  cells.push_back(glyph_cell(scope, view));
  cells.push_back(cell(status_of(scope, mark, result)));
  add_crossing_cells(cells, scope, view);
  return row(std::move(cells), mark_id(mark.id()), mark.span);
}

} // namespace strakebook::compose
