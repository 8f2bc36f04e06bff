#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "strakebook/steel/survey/readings.h"

/// Places on the hull as they are written: "PW 9.4", "BP, BC 4 to 13", "zone W 3 to 9", "whole shell".
namespace strakebook::survey {

using base::Code;

namespace {

constexpr std::string_view place_words = "a row and a station";
constexpr std::string_view reach_words = "rows and stations, a zone, or the whole shell";
constexpr std::string_view reach_examples =
    "PW 4 to 13 | BP, BC 4 to 13 | PW | zone W | zone W 3 to 9 | whole shell";

void not_a_place(Reading &reading, const Node &node, std::string_view words, std::string_view write) {
  reading.error(Code::wrong_kind, node.span, fmt::format("\"{}\" is not {}", node.text, words),
                std::string(words), std::string(write));
}

std::string spaced(std::span<const std::string_view> words) {
  std::string out;
  for (const auto word : words)
    out += (out.empty() ? "" : " ") + std::string(word);
  return out;
}

bool figure(std::string_view word) {
  return !word.empty() && (word.front() == '-' || (word.front() >= '0' && word.front() <= '9'));
}

/// "4" or "4 to 13" at the end of a reach; takes it off `words`.
bool stations(Reading &reading, const Node &node, std::span<const std::string_view> words, Reach &into) {
  if (words.empty())
    return true;
  const auto to = static_cast<std::size_t>(std::find(words.begin(), words.end(), "to") - words.begin());
  const auto first = spaced(words.first(to));
  const auto last = to < words.size() ? spaced(words.subspan(to + 1)) : first;
  const auto station = [](const std::string &text) {
    return !text.empty() && (text.find(' ') == std::string::npos || base::feet_and_inches(text));
  };
  if (!station(first) || !station(last)) {
    not_a_place(reading, node, reach_words, reach_examples);
    return false;
  }
  into.from = read_station(reading, first, node.span);
  into.to = to == words.size() ? into.from : read_station(reading, last, node.span);
  if (!into.from || !into.to)
    return false;
  if (into.to->value < into.from->value) {
    reading.error(Code::out_of_range, node.span, "the reach ends before it begins", "the lower station first",
                  fmt::format("{} to {}", into.to->raw, into.from->raw));
    return false;
  }
  return true;
}

} // namespace

Shape shape_of(const Place &, Rule) {
  return {.words = std::string(place_words),
          .example = "PW 9.4",
          .pattern = "^[A-Z]+[0-9]* (-?[0-9]+(\\.[0-9]+)?|[0-9]+ ft .+ in|[0-9]+'.+\")$",
          .choices = {}};
}
Shape shape_of(const Reach &, Rule) {
  return {.words = std::string(reach_words), .example = "PW 4 to 13", .pattern = {}, .choices = {}};
}

bool read(Reading &reading, const Node &node, Rule, Place &into) {
  const auto *text = scalar(reading, node, place_words);
  if (!text)
    return false;
  const auto words = base::words(*text);
  const auto station = words.size() < 2 ? std::string() : spaced(std::span(words).subspan(1));
  if (words.size() < 2 || (words.size() > 2 && !base::feet_and_inches(station))) {
    not_a_place(reading, node, place_words, "PW 9.4");
    return false;
  }
  const auto at = read_station(reading, station, node.span);
  if (!at)
    return false;
  reading.references.push_back({Vocabulary::row, std::string(words[0]), node.span});
  into = {std::string(words[0]), *at, node.span};
  return true;
}

bool read(Reading &reading, const Node &node, Rule, Reach &into) {
  const auto *text = scalar(reading, node, reach_words);
  if (!text)
    return false;
  into.span = node.span;
  if (*text == "whole shell")
    return true;

  auto words = base::words(*text);
  std::span<const std::string_view> rest = words;
  if (!rest.empty() && rest.front() == "zone") {
    if (rest.size() < 2) {
      not_a_place(reading, node, reach_words, reach_examples);
      return false;
    }
    into.zone = std::string(rest[1]);
    reading.references.push_back({Vocabulary::zone, into.zone, node.span});
    return stations(reading, node, rest.subspan(2), into);
  }
  bool more = true; // a comma says that another row follows
  while (more && !rest.empty() && !figure(rest.front())) {
    auto row = rest.front();
    more = row.back() == ',';
    if (more)
      row.remove_suffix(1);
    into.rows.emplace_back(row);
    reading.references.push_back({Vocabulary::row, std::string(row), node.span});
    rest = rest.subspan(1);
  }
  if (into.rows.empty() || more) {
    not_a_place(reading, node, reach_words, reach_examples);
    return false;
  }
  return stations(reading, node, rest, into);
}

Shape shape_of(const InlineGrid &, Rule) {
  return {.form = Shape::Form::grid,
          .words = "rows of stations and their readings",
          .example = "{PW: {1: 5.8 5.8 5.9, 2: no-echo}}",
          .pattern = {},
          .choices = {}};
}

bool read(Reading &reading, const Node &node, Rule, InlineGrid &into) {
  const auto refuse = [&](const Node &wrong) {
    reading.error(Code::wrong_kind, wrong.span,
                  fmt::format("{} stands where rows of readings belong", kind_words(wrong)),
                  "a row's name, and under it a line for each station", "PW: {1: 5.8 5.8 5.9, 2: no-echo}");
    return false;
  };
  if (node.kind != Node::Kind::map)
    return refuse(node);
  bool good = true;
  for (const auto &row : node.entries) {
    if (row.value.kind != Node::Kind::map)
      good = refuse(row.value);
    for (const auto &cell : row.value.entries) {
      if (cell.value.kind == Node::Kind::scalar)
        into.cells.push_back(
            {{row.key, row.key_span}, {cell.key, cell.key_span}, {cell.value.text, cell.value.span}});
      else if (cell.value.kind == Node::Kind::empty) {
        reading.error(Code::empty_value, cell.key_span,
                      fmt::format("{} {} has no reading", row.key, cell.key),
                      "readings, or why there are none", "no-echo");
        good = false;
      } else
        good = refuse(cell.value);
    }
  }
  return good;
}

} // namespace strakebook::survey
