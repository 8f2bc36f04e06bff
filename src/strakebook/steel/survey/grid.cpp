#include <fmt/format.h>

#include <algorithm>

#include "strakebook/steel/survey/readings.h"

/// The grid as it stands in a notebook: a line a station, a column a row; and the same written in the survey
/// file.
namespace strakebook::survey {

using base::Code;

namespace {

bool head_names_station(Reading &reading, const base::CsvCell &cell, const base::SourceSpan &span) {
  const std::string expected = fmt::format("station {}", reading.stations_in());
  if (cell.text == expected)
    return true;
  reading.error(Code::csv_header, span, fmt::format("the first column is headed \"{}\"", cell.text),
                "station and its unit as the datum says", expected);
  return false;
}

/// Rows named by the head from the second cell on; an unknown one is reported and left empty.
std::vector<std::string> rows_of_head(Reading &reading, const base::SourcePtr &file,
                                      const base::CsvLine &head) {
  std::vector<std::string> rows;
  for (const auto &cell : std::span(head.cells).subspan(1)) {
    const std::string name(cell.text);
    const auto span = span_of(file, head, cell);
    const bool twice = std::find(rows.begin(), rows.end(), name) != rows.end();
    const bool known = row_of(reading.survey, name) != nullptr;
    if (twice)
      reading.error(Code::csv_header, span, fmt::format("row {} heads two columns", name), "a column a row");
    if (!known) {
      std::vector<std::string> all;
      for (const auto &row : reading.survey.rows)
        all.push_back(row.id);
      const auto near = base::nearest(name, all);
      reading.error(Code::csv_header, span, fmt::format("\"{}\" is not a row of this survey", name),
                    fmt::format("one of: {}", base::joined(all, ", ")), near ? *near : std::string{});
    }
    rows.push_back(known && !twice ? name : std::string{});
  }
  return rows;
}

void add(TakenMarks &taken, const Mark &blank, std::string row, const base::Measured &station,
         const base::SourceSpan &span, CellReading cell) {
  auto &mark = taken.marks.emplace_back(blank);
  mark.row = std::move(row);
  mark.station = station;
  mark.span = span;
  mark.repeats = std::move(cell.repeats);
  mark.status = cell.status;
}

} // namespace

TakenMarks take_grid(Reading &reading, const ReadingSet &set, const base::SourcePtr &file,
                     std::span<const base::CsvLine> lines) {
  TakenMarks taken;
  const auto &head = lines.front();
  head_names_station(reading, head.cells.front(), span_of(file, head, head.cells.front()));
  const auto rows = rows_of_head(reading, file, head);
  const auto blank = blank_mark(set);
  for (const auto &line : lines.subspan(1)) {
    const auto station =
        read_station(reading, line.cells.front().text, span_of(file, line, line.cells.front()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const auto &cell = line.cells[i + 1];
      const auto span = span_of(file, line, cell);
      auto found = read_cell(reading, cell.text, span, set.unit);
      if (found && !found->planned)
        continue;
      ++taken.planned;
      if (found && station && !rows[i].empty())
        add(taken, blank, rows[i], *station, span, std::move(*found));
    }
  }
  return taken;
}

TakenMarks take_inline(Reading &reading, const ReadingSet &set) {
  TakenMarks taken;
  const auto blank = blank_mark(set);
  for (const auto &[row, at, cell] : set.written_here->cells) {
    ++taken.planned;
    reading.references.push_back({Vocabulary::row, row.value, row.span});
    const auto station = read_station(reading, at.value, at.span);
    auto found = read_cell(reading, cell.value, cell.span, set.unit);
    if (found && !found->planned)
      reading.error(Code::csv_reading, cell.span, "no mark was planned here",
                    "nothing: leave the station out");
    else if (found && station)
      add(taken, blank, row.value, *station, cell.span, std::move(*found));
  }
  return taken;
}

} // namespace strakebook::survey
