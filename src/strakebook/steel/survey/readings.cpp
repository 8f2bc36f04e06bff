#include "strakebook/steel/survey/readings.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

using base::Code;

std::span<const Choice<Form>> choices_of(Form) {
  static constexpr Choice<Form> list[] = {{"grid", Form::grid}, {"long", Form::long_form}};
  return list;
}
std::span<const Choice<Separator>> choices_of(Separator) {
  static constexpr Choice<Separator> list[] = {
      {"comma", Separator::comma}, {"semicolon", Separator::semicolon}, {"tab", Separator::tab}};
  return list;
}
std::span<const Choice<Reduction>> choices_of(Reduction) {
  static constexpr Choice<Reduction> list[] = {{"least of repeats", Reduction::least_of_repeats},
                                               {"mean of repeats", Reduction::mean_of_repeats}};
  return list;
}

base::SourceSpan span_of(const base::SourcePtr &file, const base::CsvLine &line, const base::CsvCell &cell) {
  const auto letters =
      std::count_if(cell.text.begin(), cell.text.end(), [](char c) { return (c & 0xC0) != 0x80; });
  return {file, line.line, cell.column, std::max(1, static_cast<int>(letters))};
}

Mark blank_mark(const ReadingSet &set) {
  Mark mark;
  mark.surface = set.surface;
  mark.reduce = set.reduce;
  mark.coating = set.coating_thickness;
  mark.gauge = set.gauge;
  return mark;
}

namespace {

char sign_of(Separator separator) {
  switch (separator) {
  case Separator::comma:
    return ',';
  case Separator::semicolon:
    return ';';
  case Separator::tab:
    return '\t';
  }
  return ',';
}

void compare(Reading &reading, const base::Located<int> &declared, int found, std::string_view what,
             const std::string &where) {
  if (declared.value == found)
    return;
  reading.error(Code::csv_count, declared.span,
                fmt::format("{}: {} {} found, and {} declared", where, found, what, declared.value),
                found < declared.value
                    ? "all that were noted: something is cut short or left out, or the count is wrong"
                    : "as many as were noted: something stands there twice, or the count is wrong",
                found < declared.value ? fmt::format("what is missing, or {} if nothing more was noted", found)
                                       : fmt::format("{}, if nothing stands there twice", found));
}

/// A status that wants a reason, as the survey file and the messages name it.
struct Reasoned {
  Status status;
  std::string_view key, is, written; ///< "rejected", "is rejected", how its cell is written
};
constexpr Reasoned rejection{Status::rejected, "rejected", "is rejected", "a mark whose cell ends in rejected"};
constexpr Reasoned query{Status::queried, "queried", "is held for query", "a mark whose figure ends in ?"};

/// Gives each mark of that status its reason, and each reason its mark.
void give_reasons(Reading &reading, const Reasoned &kind, const std::vector<Named> &given, std::vector<Mark> &marks) {
  std::map<std::string, const Named *> reasons;
  for (const auto &named : given)
    reasons[named.name] = &named;
  for (auto &mark : marks) {
    const auto reason = reasons.find(mark.id());
    if (reason != reasons.end() && mark.status == kind.status) {
      mark.why = reason->second->words;
      reasons.erase(reason);
    } else if (mark.status == kind.status && !mark.why.given()) {
      reading.error(Code::missing_key, mark.span, fmt::format("{} {}, and nothing says why", mark.id(), kind.is),
                    fmt::format("a reason among the readings' {}", kind.key),
                    fmt::format("{}: {{{}: why}}", kind.key, mark.id()));
    }
  }
  for (const auto &[name, named] : reasons)
    reading.error(Code::dangling_reference, named->words.span,
                  fmt::format("no mark {} {} in this set", name, kind.is), std::string(kind.written));
}

} // namespace

std::optional<TakenMarks> take_file(Reading &reading, const ReadingSet &set,
                                    const base::Folder &folder, Survey &survey) {
  if (!set.form || !set.separator)
    return std::nullopt;
  const auto &path = set.file.text;
  if (!folder.holds(path)) {
    reading.error(Code::path_escapes, set.file.span, fmt::format("\"{}\" leaves the survey's folder", path),
                  "a path inside the folder of the survey file", "readings/hull.csv");
    return std::nullopt;
  }
  const auto file = folder.source(path, set.file.span, reading.sink);
  if (!file)
    return std::nullopt;
  const auto before = reading.sink.errors();
  const auto lines = base::parse_csv(file, sign_of(*set.separator), reading.sink);
  const bool whole = reading.sink.errors() == before;
  if (lines.empty()) {
    if (whole)
      reading.error(Code::csv_header, {file, 1, 1, 1}, "there is no head",
                    "a head, then a line for each station or mark");
    return std::nullopt;
  }
  auto taken =
      *set.form == Form::grid ? take_grid(reading, set, file, lines) : take_long(reading, set, file, lines);
  const int given = static_cast<int>(lines.size()) - 1;
  survey.inputs.push_back({.kind = "readings",
                           .path = path,
                           .digest = base::sha256_hex(file->text),
                           .bytes = file->text.size(),
                           .lines = given,
                           .marks = taken.planned});
  if (!whole)
    return taken;
  const auto &declared = *set.form == Form::grid ? set.stations : set.lines;
  if (declared)
    compare(reading, *declared, given, *set.form == Form::grid ? "stations" : "lines", path);
  if (taken.planned > 0 || given == 0)
    compare(reading, set.marks, taken.planned, "marks", path);
  return taken;
}

void put_in_order(Reading &reading, std::vector<Mark> &marks) {
  std::map<std::string_view, std::size_t> order;
  for (const auto &row : reading.survey.rows)
    order.emplace(row.id, order.size());
  const auto rank = [&](const Mark &mark) {
    const auto found = order.find(mark.row);
    return std::pair(found == order.end() ? order.size() : found->second, mark.station.value);
  };
  std::stable_sort(marks.begin(), marks.end(), [&](const Mark &a, const Mark &b) { return rank(a) < rank(b); });
  for (std::size_t i = 1; i < marks.size(); ++i) {
    const auto &first = marks[i - 1], &mark = marks[i];
    if (first.row != mark.row || first.station.value != mark.station.value)
      continue;
    reading.error(Code::duplicate_mark, mark.span, fmt::format("mark {} is given twice", mark.id()),
                  fmt::format("each mark once; the other stands in {}, line {}", first.span.file->path,
                              first.span.line));
  }
}

void take_readings(Reading &reading, const std::vector<ReadingSet> &sets, const base::Folder &folder,
                   Survey &survey) {
  const auto before = reading.sink.errors();
  for (const auto &set : sets) {
    std::optional<TakenMarks> taken;
    if (set.written_here) {
      taken = take_inline(reading, set);
      if (set.marks.value > 0)
        compare(reading, set.marks, taken->planned, "marks", "the readings here");
      survey.inputs.front().marks += taken->planned;
    } else if (set.file.given()) {
      taken = take_file(reading, set, folder, survey);
    }
    if (!taken)
      continue;
    give_reasons(reading, rejection, set.rejected, taken->marks);
    give_reasons(reading, query, set.queried, taken->marks);
    std::move(taken->marks.begin(), taken->marks.end(), std::back_inserter(survey.marks));
  }
  put_in_order(reading, survey.marks);
  reading.marks_complete = reading.sink.errors() == before && !sets.empty();
  for (auto &mark : survey.marks)
    for (const auto &doubler : survey.doublers)
      if (covers(survey, doubler.over, mark.row, mark.station.value))
        mark.plate = Plate::doubler;
}

} // namespace strakebook::survey
