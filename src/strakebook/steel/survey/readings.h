#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "strakebook/base/csv.h"
#include "strakebook/base/folder.h"
#include "strakebook/steel/survey/values.h"

/// Sets of readings as the survey declares them, and how they become marks.
namespace strakebook::survey {

enum class Form { grid, long_form };
std::span<const Choice<Form>> choices_of(Form);
std::span<const Choice<Separator>> choices_of(Separator);
std::span<const Choice<Reduction>> choices_of(Reduction);

/// One file of readings, or one set written in the survey itself.
struct ReadingSet {
  Words file;
  std::optional<Form> form;
  std::optional<Separator> separator;
  std::optional<InlineGrid> written_here;
  base::Unit unit = base::Unit::millimetre;
  Given<int> stations, lines; ///< declared: lines of a grid, lines of a long file
  base::Located<int> marks;   ///< declared: marks planned
  Surface surface = Surface::bare;
  std::optional<base::Measured> coating_thickness; ///< dry film, of the marks read single echo
  std::string gauge;
  Reduction reduce = Reduction::least_of_repeats;
  std::vector<Named> rejected, queried; ///< mark and reason
  base::SourceSpan span;
};

/// survey.yaml as it stands: the survey, and the sets its marks come from.
struct SurveyFile {
  int version = 0;
  Survey survey;
  std::vector<ReadingSet> readings;
};

class Fields;
void fields(Fields &, ReadingSet &);
void fields(Fields &, SurveyFile &);

/// What a cell says.
struct CellReading {
  std::vector<base::Measured> repeats;
  Status status = Status::read;
  bool planned = true; ///< false: no mark was planned there
};
/// Reads "5.8 5.8 5.9", "no-echo", "5.0 6.4 rejected", "0.187 in", "5/16?", "none-planned"; reports and returns
/// nullopt otherwise.
std::optional<CellReading> read_cell(Reading &, std::string_view text, const base::SourceSpan &,
                                     base::Unit unit);

/// Marks of one set, and how many were planned in it, unreadable ones included.
struct TakenMarks {
  std::vector<Mark> marks;
  int planned = 0;
};
TakenMarks take_grid(Reading &, const ReadingSet &, const base::SourcePtr &,
                     std::span<const base::CsvLine> lines);
TakenMarks take_long(Reading &, const ReadingSet &, const base::SourcePtr &,
                     std::span<const base::CsvLine> lines);
TakenMarks take_inline(Reading &, const ReadingSet &);

/// A mark of this set, without place and reading.
Mark blank_mark(const ReadingSet &);
/// A station as it is written: a number of the datum's unit, or feet and inches where that is feet; reports and returns nullopt otherwise.
std::optional<base::Measured> read_station(Reading &, std::string_view text, const base::SourceSpan &);
base::SourceSpan span_of(const base::SourcePtr &, const base::CsvLine &, const base::CsvCell &);

/// Reads the file that a set names, and records it in `survey.inputs`; reports and returns nullopt where it cannot be read. Counts
/// are compared only where every line was whole: a broken line is reported itself.
std::optional<TakenMarks> take_file(Reading &, const ReadingSet &, const base::Folder &folder, Survey &survey);

/// By the survey's rows, stations ascending; reports a mark given twice.
void put_in_order(Reading &, std::vector<Mark> &);

/// Reads the marks of every earlier survey, and reports one that is not earlier.
void take_earlier(Reading &, const base::Folder &folder, Survey &survey);

/// Reads every set into `survey.marks` (rows in the survey's order, stations ascending), compares the
/// declared counts, marks those on doublers, and records the files in `survey.inputs`.
void take_readings(Reading &, const std::vector<ReadingSet> &, const base::Folder &folder,
                   Survey &survey);

} // namespace strakebook::survey
