#include "strakebook/steel/survey/pit_figures.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::survey {

using base::Code;
using base::Measured;

namespace {

constexpr std::string_view both_figures =
    "two figures: adjacent, the thickness of the plate beside it, and depth, below that surface";

std::string mm(base::Length length) { return base::mm_exact(length); }

/// One figure of a pit, and all that is known about the place it was noted at.
struct OneFigure {
  std::string id, place; ///< place as written; may be empty
  std::optional<Measured> figure, adjacent;
  std::string missing;
  base::SourceSpan span;
};

/// The plate that a single figure may be measured against: beside it, the nearest reading, or the zone's
/// original.
struct Against {
  base::Length thickness;
  std::string words;
};
/// The mark of that row, read on hull plate, that is nearest to the pit.
const Mark *nearest_mark(const Survey &survey, std::string_view row, base::Length station) {
  const Mark *nearest = nullptr;
  const auto away = [&](const Mark &mark) {
    return std::max(mark.station.value - station, station - mark.station.value);
  };
  for (const auto &mark : survey.marks)
    if (mark.row == row && mark.status == Status::read && mark.plate == Plate::hull &&
        !mark.repeats.empty() && (!nearest || away(mark) < away(*nearest)))
      nearest = &mark;
  return nearest;
}

std::optional<Against> against(const Survey &survey, const OneFigure &pit) {
  if (pit.adjacent)
    return Against{pit.adjacent->value, fmt::format("the adjacent {}", pit.adjacent->raw)};
  const auto words = base::words(pit.place);
  base::MeasuredError wrong;
  const auto station =
      words.size() == 2 ? base::parse_measured(words[1], survey.datum.station_unit, wrong) : std::nullopt;
  const auto *row = station ? row_of(survey, words[0]) : nullptr;
  if (const auto *mark = row ? nearest_mark(survey, row->id, station->value) : nullptr) {
    const auto &least = *std::min_element(mark->repeats.begin(), mark->repeats.end(),
                                          [](const auto &a, const auto &b) { return a.value < b.value; });
    return Against{least.value, fmt::format("the {} read at {}", least.raw, mark->id())};
  }
  const auto *zone = row ? zone_of(survey, row->zone) : nullptr;
  if (!zone || zone->original.nominal.raw.empty())
    return std::nullopt;
  return Against{zone->original.nominal.value, fmt::format("the original {}", zone->original.nominal.raw)};
}

std::string both_meanings(const OneFigure &pit, const std::optional<Against> &plate) {
  const auto left = plate ? plate->thickness - pit.figure->value : base::Length{};
  if (!plate)
    return fmt::format("as a depth it leaves an unknown rest; as a remainder it leaves {}", pit.figure->raw);
  if (left < base::Length{})
    return fmt::format("as a depth it is more than {}; as a remainder it leaves {}", plate->words,
                       pit.figure->raw);
  return fmt::format("as a depth it leaves {} of {}; as a remainder it leaves {}", mm(left), plate->words,
                     pit.figure->raw);
}

std::string how_to_write(const OneFigure &pit, const std::optional<Against> &plate) {
  const auto entry = [&](const std::string &depth) {
    return fmt::format("{}: {{at: {}, adjacent: {}, depth: {}}}", pit.id,
                       pit.place.empty() ? "..." : pit.place, pit.adjacent ? pit.adjacent->raw : "...",
                       depth);
  };
  if (!pit.figure)
    return entry("...");
  const auto &figure = pit.figure->raw;
  if (!pit.adjacent)
    return fmt::format("{}; the depth is {}, or adjacent less {} if that is what is left", entry("..."),
                       figure, figure);
  const auto rest = plate->thickness - pit.figure->value;
  if (rest < base::Length{})
    return entry("...");
  return fmt::format("{} if {} is what is left; depth: {} if that is the depth", entry(mm(rest)), figure,
                     figure);
}

void report_now(Reading &reading, const OneFigure &pit) {
  const auto plate = against(reading.survey, pit);
  auto message = fmt::format("pit {}{}: {} missing", pit.id,
                             pit.place.empty() ? "" : fmt::format(" at {}", pit.place), pit.missing);
  if (pit.figure)
    message += fmt::format(", and {} alone means two things: {}", pit.figure->raw, both_meanings(pit, plate));
  reading.error(Code::pit_one_figure, pit.span, std::move(message), std::string(both_figures),
                how_to_write(pit, plate));
}

/// The message compares with the readings, and they come last.
void report(Reading &reading, OneFigure pit) {
  reading.afterwards.push_back([pit = std::move(pit)](Reading &r) { report_now(r, pit); });
}

std::string text_at(const base::YamlNode &map, std::string_view key) {
  const auto *node = map.find(key);
  return node ? node->text : std::string{};
}

} // namespace

void close_pit(Reading &reading, const base::YamlNode &map, const base::SourceSpan &key,
               const PitFigures &written, Pit &into) {
  const auto *adjacent = map.find("adjacent");
  const auto *depth = map.find("depth");
  if (!adjacent || !depth) {
    const auto &figure = written.depth ? written.depth : written.remaining;
    const auto *stands = depth ? depth : map.find("remaining");
    if (!stands)
      stands = adjacent;
    return report(reading, {.id = into.id,
                            .place = text_at(map, "at"),
                            .figure = figure,
                            .adjacent = written.adjacent,
                            .missing = !adjacent && !depth ? "adjacent and depth are"
                                       : !depth            ? "depth is"
                                                           : "adjacent is",
                            .span = stands ? stands->span : key});
  }
  if (!written.adjacent || !written.depth)
    return;
  into.adjacent = *written.adjacent;
  into.depth = *written.depth;
  const auto left = into.adjacent.value - into.depth.value;
  const auto sum = fmt::format("{} - {} = {}", into.adjacent.raw, into.depth.raw, mm(left));
  if (left < base::Length{})
    reading.error(Code::pit_not_closed, depth->span,
                  fmt::format("pit {} is deeper than the plate beside it: {}", into.id, sum),
                  fmt::format("a depth of at most {}", into.adjacent.raw),
                  "a depth equal to adjacent for a hole");
  else if (written.remaining && written.remaining->value != left)
    reading.error(
        Code::pit_not_closed, map.find("remaining")->span,
        fmt::format("pit {} does not close: {}, and {} is written", into.id, sum, written.remaining->raw),
        "remaining = adjacent - depth", "the figure that was wrong, put right");
}

bool refuse_bare_figure(Reading &reading, const std::string &id, const base::YamlNode &node,
                        const base::SourceSpan &) {
  const auto *figure = &node;
  if (node.kind == base::YamlNode::Kind::map) {
    if (node.find("adjacent") || node.find("depth"))
      return false;
    figure = node.find("pit");
  }
  if (!figure || figure->kind != base::YamlNode::Kind::scalar)
    return false;
  base::MeasuredError wrong;
  report(reading, {.id = id,
                   .place = text_at(node, "at"),
                   .figure = base::parse_measured(figure->text, base::Unit::millimetre, wrong),
                   .adjacent = std::nullopt,
                   .missing = "adjacent and depth are",
                   .span = figure->span});
  return true;
}

} // namespace strakebook::survey
