#include <algorithm>

#include "strakebook/compose/results_readings.h"
#include "strakebook/compose/tables.h"

/// The readings table in few columns: what remains is told among the figures displayed, the words of a mark that is not used
/// stand where its loss would.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr std::size_t most_figures = 16; // letters of figures at a mark for which the narrow table has room: three of "10.0"

std::vector<base::Measured>::const_iterator least_of(const survey::Mark &mark) {
  return std::ranges::min_element(mark.repeats, {}, &base::Measured::value);
}

/// The figures displayed, what remains among them in strong.
Inlines displayed_with_least(const survey::Mark &mark) {
  Inlines out;
  const auto least = least_of(mark);
  for (auto repeat = mark.repeats.begin(); repeat != mark.repeats.end(); ++repeat) {
    if (!out.empty()) out = out + content::soft("  ");
    out = out + (repeat == least ? content::strong(repeat->raw) : content::soft(repeat->raw));
  }
  return out;
}

/// The station, in strong where it is the row's lowest; it leads to the map.
Inlines station(const ReadingsView &table, const survey::Mark &mark, const assess::MarkResult &result) {
  const auto emphasis = result.lowest_of_row ? content::Emphasis::strong : content::Emphasis::plain;
  return {content::Reference{table.map.of(mark), content::Reference::Form::text, mark.station.raw, emphasis}};
}

} // namespace

bool may_be_narrow(const Scope &scope, const ReadingsView &table) {
  if (table.low || table.with_units) return false;
  return std::ranges::all_of(scope.assessment().marks, [&](const assess::MarkResult &result) {
    const survey::Mark &mark = scope.survey().marks[result.mark];
    if (displayed(scope, mark, false).size() > most_figures) return false;
    if (!result.used) return true;
    const std::string &zone = survey::zone_of_row(scope.survey(), mark.row).id;
    const std::size_t lowest_alone = result.lowest_of_row ? 1 : 0;
    return least_of(mark)->raw == remaining_text(scope, zone, result.remaining) && status_of(scope, mark, result).size() == lowest_alone;
  });
}

std::vector<content::Column> narrow_columns(const Scope &scope, const ReadingsView &table) {
  const std::string mm = scope.say("voice.mm");
  std::vector<content::Column> columns = {column(scope.say("results.station"), Align::right, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("results.displayed"), Align::right, mm),
          column(scope.say("results.loss"), Align::decimal, mm),
          column(scope.say("results.share"), Align::decimal, scope.say("results.share-unit")),
          column(scope.say("results.over-limit"), Align::decimal, mm),
          column(scope.say("results.section"))};
  add_crossing_columns(columns, scope, table);
  return columns;
}

content::Row narrow_row(const Scope &scope, const MarkView &view) {
  const auto &[table, line, mark, result] = view;
  std::vector<content::Cell> cells = {cell(station(table, mark, result))};
  if (result.used) {
    cells.push_back(cell(displayed_with_least(mark)));
    cells.push_back(line.weak ? dash_cell(scope) : cell(with_minus(base::mm_exact(result.loss, 1))));
    cells.push_back(share_cell(scope, result.share));
    cells.push_back(margin_cell(scope, result.standing));
  } else {
    cells.push_back(cell(content::soft(displayed(scope, mark, false))));
    cells.push_back(cell(status_of(scope, mark, result)));
    cells.back().across = 3;
  }
  cells.push_back(glyph_cell(scope, view));
  cells.back().glyph->x.measure = "glyph-millimetre-narrow";
  add_crossing_cells(cells, scope, view);
  return row(std::move(cells), mark_id(mark.id()), mark.span);
}

} // namespace strakebook::compose
