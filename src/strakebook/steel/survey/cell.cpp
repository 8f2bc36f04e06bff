#include <fmt/format.h>

#include <algorithm>

#include "strakebook/steel/survey/readings.h"

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
    if (choice.word == word && choice.value != Status::rejected)
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
  if (found->value > base::Length{} && found->value <= thickest_plate)
    return found;
  const bool zero = found->value <= base::Length{};
  reading.error(
      Code::reading_implausible, span,
      zero ? fmt::format("{} is no thickness", text)
           : fmt::format("{} is {} mm, and no hull plate is this thick", text, base::mm_exact(found->value)),
      zero ? "a reading above 0; a mark that would not read has a status word"
           : fmt::format("at most {} mm", base::mm_exact(thickest_plate)),
      zero ? "no-echo" : "the figure that was displayed, with its unit if it is another");
  return std::nullopt;
}

/// Words of a cell joined where a unit follows its figure: "3/16", "in" is one.
std::vector<std::string_view> figures_of(std::string_view cell, std::span<const std::string_view> words) {
  std::vector<std::string_view> figures;
  for (const auto word : words) {
    if (!figures.empty() && base::unit_named(word))
      figures.back() =
          cell.substr(static_cast<std::size_t>(figures.back().data() - cell.data()),
                      static_cast<std::size_t>(word.data() + word.size() - figures.back().data()));
    else
      figures.push_back(word);
  }
  return figures;
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
    if (words[0] == rejected) {
      reading.error(Code::csv_reading, span, "a rejected mark has no figures",
                    "the figures that are rejected, then the word", "6.4 rejected");
      return std::nullopt;
    }
  }
  std::span<const std::string_view> rest = words;
  if (rest.back() == rejected) {
    cell.status = Status::rejected;
    rest = rest.first(rest.size() - 1);
  }
  for (const auto one : figures_of(text, rest)) {
    const auto place = part_of(span, text, one);
    if (!looks_like_figures(one)) {
      refuse_word(reading, one, place);
      return std::nullopt;
    }
    auto found = figure(reading, one, place, unit);
    if (!found)
      return std::nullopt;
    cell.repeats.push_back(std::move(*found));
  }
  return cell;
}

std::optional<base::Measured> read_station(Reading &reading, std::string_view text,
                                           const base::SourceSpan &span) {
  const auto unit = reading.survey.datum.station_unit;
  base::MeasuredError wrong;
  if (base::parse_decimal(text))
    if (auto found = base::parse_measured(text, unit, wrong))
      return found;
  reading.error(Code::bad_length, span,
                fmt::format("station \"{}\" is not a distance: {}", text, base::why_not_decimal(text)),
                fmt::format("a number of {} from the datum", base::name_of(unit)));
  return std::nullopt;
}

} // namespace strakebook::survey
