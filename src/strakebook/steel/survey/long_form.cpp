#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "strakebook/steel/survey/readings.h"

/// The long form of a gauge's log: a line a mark, columns named in the head.
namespace strakebook::survey {

using base::Code;

namespace {

/// Where each column stands; -1: not there.
struct Columns {
  int mark = -1, row = -1, station = -1, reading = -1, surface = -1, plate = -1, remark = -1;
};

struct Column {
  std::string name;
  int Columns::*at;
};

std::vector<Column> known_columns(const Reading &reading, const ReadingSet &set) {
  const auto with_unit = [](std::string_view name, base::Unit unit) {
    return fmt::format("{} {}", name, base::name_of(unit));
  };
  return {{"mark", &Columns::mark},
          {"row", &Columns::row},
          {with_unit("station", reading.survey.datum.station_unit), &Columns::station},
          {with_unit("reading", set.unit), &Columns::reading},
          {"surface", &Columns::surface},
          {"plate", &Columns::plate},
          {"remark", &Columns::remark}};
}

/// nullopt after csv_header was reported.
std::optional<Columns> columns_of(Reading &reading, const ReadingSet &set, const base::SourcePtr &file,
                                  const base::CsvLine &head) {
  const auto known = known_columns(reading, set);
  std::vector<std::string> names;
  for (const auto &column : known)
    names.push_back(column.name);
  Columns columns;
  bool good = true;
  for (std::size_t i = 0; i < head.cells.size(); ++i) {
    const auto span = span_of(file, head, head.cells[i]);
    const auto found = std::find(names.begin(), names.end(), head.cells[i].text);
    if (found == names.end()) {
      const auto near = base::nearest(head.cells[i].text, names);
      reading.error(Code::csv_header, span,
                    fmt::format("\"{}\" is not a column of a long file", head.cells[i].text),
                    fmt::format("one of: {}", base::joined(names, ", ")), near ? *near : std::string{});
      good = false;
      continue;
    }
    auto &at = columns.*known[static_cast<std::size_t>(found - names.begin())].at;
    if (at >= 0) {
      reading.error(Code::csv_header, span, fmt::format("{} heads two columns", *found), "each column once");
      good = false;
    }
    at = static_cast<int>(i);
  }
  if (!good)
    return std::nullopt;
  const bool placed =
      columns.mark >= 0 ? columns.row < 0 && columns.station < 0 : columns.row >= 0 && columns.station >= 0;
  if (placed && columns.reading >= 0)
    return columns;
  reading.error(Code::csv_header, span_of(file, head, head.cells.front()),
                "the head does not name mark and reading",
                fmt::format("mark, or row and {}; then {}", names[2], names[3]), "mark, " + names[3]);
  return std::nullopt;
}

/// One line of the file, cell by cell.
struct LineReader {
  Reading &reading;
  const ReadingSet &set;
  const base::SourcePtr &file;
  const Columns &columns;
  const base::CsvLine &line;

  std::string_view text(int column) const { return line.cells[static_cast<std::size_t>(column)].text; }
  base::SourceSpan span(int column) const {
    return span_of(file, line, line.cells[static_cast<std::size_t>(column)]);
  }

  template <Worded E> void word(int column, E &into) const {
    if (column < 0)
      return;
    for (const auto &choice : choices_of(into))
      if (choice.word == text(column)) {
        into = choice.value;
        return;
      }
    reading.unknown_word(span(column), text(column), "a word for this column", words_of(into));
  }

  /// Row and station, from one column or two.
  bool place(Mark &mark) const {
    std::string_view row, station;
    const int at = columns.mark >= 0 ? columns.mark : columns.row;
    if (columns.mark >= 0) {
      const auto words = base::words(text(at));
      if (words.size() != 2) {
        reading.error(Code::csv_reading, span(at), fmt::format("\"{}\" is not a mark", text(at)),
                      "row and station", "PW 9");
        return false;
      }
      row = words[0];
      station = words[1];
    } else {
      row = text(columns.row);
      station = text(columns.station);
    }
    reading.references.push_back({Vocabulary::row, std::string(row), span(at)});
    const auto found = read_station(reading, station, span(columns.mark >= 0 ? at : columns.station));
    mark.row = std::string(row);
    if (found)
      mark.station = *found;
    return found.has_value();
  }
};

} // namespace

TakenMarks take_long(Reading &reading, const ReadingSet &set, const base::SourcePtr &file,
                     std::span<const base::CsvLine> lines) {
  TakenMarks taken;
  const auto columns = columns_of(reading, set, file, lines.front());
  if (!columns)
    return taken;
  const auto blank = blank_mark(set);
  for (const auto &line : lines.subspan(1)) {
    const LineReader from{reading, set, file, *columns, line};
    auto mark = blank;
    const bool placed = from.place(mark);
    auto cell = read_cell(reading, from.text(columns->reading), from.span(columns->reading), set.unit);
    from.word(columns->surface, mark.surface);
    from.word(columns->plate, mark.plate);
    if (columns->remark >= 0)
      mark.why = {std::string(from.text(columns->remark)), from.span(columns->remark)};
    if (cell && !cell->planned)
      continue;
    ++taken.planned;
    if (!cell || !placed)
      continue;
    mark.repeats = std::move(cell->repeats);
    mark.status = cell->status;
    mark.span = from.span(columns->reading);
    taken.marks.push_back(std::move(mark));
  }
  return taken;
}

} // namespace strakebook::survey
