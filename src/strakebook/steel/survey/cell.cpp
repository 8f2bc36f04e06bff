#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "strakebook/base/wide.h"
#include "strakebook/steel/survey/readings.h"
#include "strakebook/steel/survey/unit_slip.h"

/// One cell: repeats, a status word, or figures that were rejected.
namespace strakebook::survey {

using base::Code;

namespace {

constexpr std::string_view none_planned = "none-planned";
constexpr std::string_view rejected = "rejected";
constexpr std::string_view cell_words = "readings with blanks between them, or a status word";

bool looks_like_figures(std::string_view word) {
  return (word.front() >= '0' && word.front() <= '9') ||
         ((word.front() == '.' || word.front() == '-' || word.front() == '+') && word.size() > 1);
}

std::optional<Status> status_named(std::string_view word) {
  for (const auto &choice : choices_of(Status{}))
    if (choice.word == word && choice.value != Status::rejected && choice.value != Status::queried)
      return choice.value;
  return std::nullopt;
}

base::SourceSpan part_of(base::SourceSpan span, std::string_view cell, std::string_view word) {
  if (const auto offset = static_cast<std::size_t>(word.data() - cell.data()); offset < cell.size()) {
    span.column += static_cast<int>(offset);
    span.length = static_cast<int>(word.size());
  }
  return span;
}

void refuse_word(Reading &reading, std::string_view word, const base::SourceSpan &span) {
  auto words = words_of(Status{});
  words.emplace_back(none_planned);
  const auto near = base::nearest(word, words);
  reading.error(Code::csv_reading, span,
                word.empty() ? "the cell is blank"
                             : fmt::format("\"{}\" is neither a reading nor a status word", word),
                fmt::format("{}: {}", cell_words, base::joined(words, ", ")),
                near ? *near : "why the mark was not read: no-echo");
}

std::optional<base::Measured> figure(Reading &reading, std::string_view text, const base::SourceSpan &span,
                                     base::Unit unit) {
  base::MeasuredError wrong;
  auto found = base::parse_measured(text, unit, wrong);
  if (!found) {
    const auto comma = text.find(',');
    std::string point(text);
    if (comma != std::string_view::npos)
      point[comma] = '.';
    reading.error(Code::bad_number, span, fmt::format("\"{}\" is not a reading: {}", text, wrong.found),
                  wrong.expected, comma != std::string_view::npos ? point : std::string{});
    return std::nullopt;
  }
  if (found->value <= base::Length{}) {
    reading.error(Code::reading_implausible, span, fmt::format("{} is no thickness", text),
                  "a reading above 0; a mark that would not read has a status word", "no-echo");
    return std::nullopt;
  }
  if (!impossible_plate(*found))
    return found;
  refuse_plate(reading, *found, span);
  return std::nullopt;
}

/// A figure and the query behind it, if one stands there.
struct Noted {
  std::string_view figure;
  bool query = false;
};
Noted noted(std::string_view word) {
  const bool query = word.ends_with('?');
  if (query)
    word.remove_suffix(1);
  return {word, query};
}

/// "5/16?" and "5/16? in": the query touches the figure, so it is taken out before the length is read.
std::optional<base::Measured> noted_figure(Reading &reading, std::string_view text, const base::SourceSpan &span,
                                           base::Unit unit, bool &query) {
  const auto blank = text.find(' ');
  const auto [first, asked] = noted(text.substr(0, blank));
  if (!asked)
    return figure(reading, text, span, unit);
  query = true;
  auto found = figure(reading, std::string(first) + (blank == text.npos ? "" : std::string(text.substr(blank))), span, unit);
  if (found)
    found->raw = std::string(text);
  return found;
}

bool whole_figure(std::string_view word) {
  return !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// True, after it was reported, for "1 1/4" without its unit: one length, or two readings.
bool unclear_fraction(Reading &reading, std::string_view cell, std::span<const std::string_view> words,
                      const base::SourceSpan &span) {
  for (std::size_t i = 1; i < words.size(); ++i) {
    const bool unit_follows = i + 1 < words.size() && base::unit_named(words[i + 1]);
    if (!whole_figure(words[i - 1]) || words[i].find('/') == std::string_view::npos || unit_follows)
      continue;
    reading.error(Code::csv_reading, part_of(span, cell, words[i - 1]),
                  fmt::format("\"{} {}\" could be one length or two readings", words[i - 1], words[i]),
                  "the unit after a whole number with a fraction, or after each of two readings",
                  fmt::format("{0} {1} in, or {0} in {1} in", words[i - 1], words[i]));
    return true;
  }
  return false;
}

/// Words of a cell joined where a unit follows its figure: "3/16", "in" is one, and so is "1", "1/4", "in".
std::vector<std::string_view> figures_of(std::string_view cell, std::span<const std::string_view> words) {
  std::vector<std::string_view> figures;
  for (const auto word : words) {
    const bool part = !figures.empty() && whole_figure(figures.back()) && word.find('/') != std::string_view::npos;
    if (!figures.empty() && (part || base::unit_named(word) || base::unclear_unit(word)))
      figures.back() =
          cell.substr(static_cast<std::size_t>(figures.back().data() - cell.data()),
                      static_cast<std::size_t>(word.data() + word.size() - figures.back().data()));
    else
      figures.push_back(word);
  }
  return figures;
}

/// A frame's number as the distance from frame 0.
std::optional<base::Measured> read_frame(Reading &reading, std::string_view text, base::Length spacing,
                                         const base::SourceSpan &span) {
  const auto frame = base::parse_decimal(text);
  const auto part = frame ? base::power_of_ten(frame->places) : 1;
  const auto along = frame ? base::Wide{frame->digits} * spacing.nm() : 0;
  constexpr base::Wide most = std::numeric_limits<std::int64_t>::max() / 2; // so that a datum's zero can be added
  if (frame && along % part == 0 && along / part < most && -most < along / part)
    return base::Measured{.value = base::Length::nanometres(base::narrow(along / part)), .raw = std::string(text),
                          .unit = base::Unit::metre, .places = frame->places};
  reading.error(Code::bad_length, span, fmt::format("\"{}\" is not the number of a frame", text),
                "a number of frames from the datum: 35, or 35.5 between two of them");
  return std::nullopt;
}

} // namespace

std::optional<CellReading> read_cell(Reading &reading, std::string_view text, const base::SourceSpan &span,
                                     base::Unit unit) {
  const auto words = base::words(text);
  if (words.empty()) {
    refuse_word(reading, {}, span);
    return std::nullopt;
  }
  CellReading cell;
  if (words.size() == 1) {
    if (words[0] == none_planned)
      return CellReading{.repeats = {}, .status = Status::read, .planned = false};
    if (const auto status = status_named(words[0]))
      return CellReading{.repeats = {}, .status = *status, .planned = true};
    if (words[0] == rejected || words[0] == "queried") {
      const bool query = words[0] != rejected;
      reading.error(Code::csv_reading, span, fmt::format("a {} mark has no figures", words[0]),
                    query ? "the figure as it was noted, with its query" : "the figures that are rejected, then the word",
                    query ? "5/16?" : "6.4 rejected");
      return std::nullopt;
    }
  }
  std::span<const std::string_view> rest = words;
  if (rest.back() == rejected) {
    cell.status = Status::rejected;
    rest = rest.first(rest.size() - 1);
  }
  if (unclear_fraction(reading, text, rest, span))
    return std::nullopt;
  bool query = false;
  for (const auto one : figures_of(text, rest)) {
    const auto place = part_of(span, text, one);
    if (!looks_like_figures(one)) {
      refuse_word(reading, one, place);
      return std::nullopt;
    }
    auto found = noted_figure(reading, one, place, unit, query);
    if (!found)
      return std::nullopt;
    cell.repeats.push_back(std::move(*found));
  }
  if (query && cell.status == Status::read)
    cell.status = Status::queried;
  return cell;
}

std::optional<base::Measured> read_station(Reading &reading, std::string_view text,
                                           const base::SourceSpan &span) {
  if (reading.other_datum && reading.other_datum->frame)
    return read_frame(reading, text, *reading.other_datum->frame, span);
  const auto unit = reading.station_unit();
  base::MeasuredError wrong;
  const bool feet = base::feet_and_inches(text);
  if (base::parse_decimal(text) || (feet && unit == base::Unit::foot))
    if (auto found = base::parse_measured(text, unit, wrong))
      return found;
  const std::string why = feet && wrong.found.empty() ? "the datum counts stations in another unit"
                          : wrong.found.empty()       ? base::why_not_decimal(text)
                                                      : wrong.found;
  reading.error(Code::bad_length, span, fmt::format("station \"{}\" is not a distance: {}", text, why),
                unit == base::Unit::foot ? "a number of ft from the datum, or feet and inches: 12 ft 6 in"
                                         : fmt::format("a number of {} from the datum", base::name_of(unit)));
  return std::nullopt;
}

} // namespace strakebook::survey
