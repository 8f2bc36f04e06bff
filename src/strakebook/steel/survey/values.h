#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/reading.h"

/// How each type of value is written: its shape (for schema and skeleton) and its reading, side by side.
namespace strakebook::survey {

/// What a value has to keep beyond its type.
enum class Rule {
  none,
  positive,     ///< more than 0
  percent,      ///< 0 to 100
  plate,        ///< a thickness that a hull's plate can have
  depth,        ///< 0 or more, and not beyond the thickest plate
  unit_written, ///< a length whose unit stands beside it
  unit_written_or_none, ///< the same, and 0 says that there is none
  position,     ///< the same, either way of where it counts from
  source        ///< measured; told, WHO; document, WHICH
};

/// No plate of a hull surveyed from such a file is this thick; a larger figure is a slip of the pen or the
/// unit.
inline constexpr base::Length thickest_plate = base::Length::millimetres(60);
/// A gauge in the hand shows no plate thinner than this; a smaller figure in inches or thou was meant in another unit.
inline constexpr base::Length thinnest_reading = base::Length::micrometres(500);

struct Shape {
  enum class Form { scalar, one_or_list, map, statements, grid };
  Form form = Form::scalar;
  bool sourced = false;             ///< may be written {value: , source: }
  std::string words;                ///< "a date": what is expected
  std::string example;              ///< "2026-10-14"
  std::string pattern;              ///< ECMA-262; may be empty
  std::vector<std::string> choices; ///< closed list; may be empty
};

/// Readings written in the survey file itself: row, station and cell, each with its place.
struct InlineCell {
  base::Located<std::string> row, station, cell;
};
struct InlineGrid {
  std::vector<InlineCell> cells;
};

// The single values. read() returns false after it has reported what is wrong; `into` is then not to be used.
using Node = base::YamlNode;
Shape shape_of(const std::string &, Rule);
Shape shape_of(const Words &, Rule);
Shape shape_of(const int &, Rule);
Shape shape_of(const base::Decimal &, Rule);
Shape shape_of(const base::Length &, Rule);
Shape shape_of(const base::Measured &, Rule);
Shape shape_of(const base::Date &, Rule);
Shape shape_of(const Fact &, Rule);
Shape shape_of(const LengthFact &, Rule);
Shape shape_of(const Place &, Rule);
Shape shape_of(const Reach &, Rule);
Shape shape_of(const InlineGrid &, Rule);
Shape shape_of(const std::vector<Named> &, Rule);
Shape shape_of(const std::vector<Acknowledgement> &, Rule);
Shape shape_of(const std::vector<Statement> &, Rule);

bool read(Reading &, const Node &, Rule, std::string &into);
bool read(Reading &, const Node &, Rule, Words &into);
bool read(Reading &, const Node &, Rule, int &into);
bool read(Reading &, const Node &, Rule, base::Decimal &into);
bool read(Reading &, const Node &, Rule, base::Length &into);
bool read(Reading &, const Node &, Rule, base::Measured &into);
bool read(Reading &, const Node &, Rule, base::Date &into);
bool read(Reading &, const Node &, Rule, Fact &into);
bool read(Reading &, const Node &, Rule, LengthFact &into);
bool read(Reading &, const Node &, Rule, Place &into);
bool read(Reading &, const Node &, Rule, Reach &into);
bool read(Reading &, const Node &, Rule, InlineGrid &into);
bool read(Reading &, const Node &, Rule, std::vector<Named> &into);
bool read(Reading &, const Node &, Rule, std::vector<Acknowledgement> &into);
bool read(Reading &, const Node &, Rule, std::vector<Statement> &into);

/// "measured", "told, owner", "document, invoice 14"; reports and returns nullopt otherwise.
std::optional<base::Provenance> read_source(Reading &, const Node &);

// Closed words.
template <Worded E> Shape shape_of(const E &kind, Rule) {
  auto words = words_of(kind);
  return {.words = "one of: " + base::joined(words, ", "),
          .example = words.front(),
          .pattern = {},
          .choices = words};
}
template <Worded E> bool read(Reading &reading, const Node &node, Rule, E &into) {
  const auto *text = scalar(reading, node, shape_of(into, Rule::none).words);
  if (!text)
    return false;
  for (const auto &choice : choices_of(into))
    if (choice.word == *text) {
      into = choice.value;
      return true;
    }
  reading.unknown_word(node.span, *text, "a word that is known here", words_of(into));
  return false;
}

// A value that may be absent, a value with its place, one value or a list of them.
template <class T> Shape shape_of(const base::Located<T> &, Rule rule);
template <class T> Shape shape_of(const std::optional<T> &, Rule rule) { return shape_of(T{}, rule); }
template <class T> Shape shape_of(const base::Located<T> &, Rule rule) { return shape_of(T{}, rule); }
template <class T> Shape shape_of(const std::vector<T> &, Rule rule) {
  auto shape = shape_of(T{}, rule);
  shape.form = Shape::Form::one_or_list;
  return shape;
}

template <class T> bool read(Reading &reading, const Node &node, Rule rule, base::Located<T> &into) {
  into.span = node.span;
  return read(reading, node, rule, into.value);
}
template <class T> bool read(Reading &reading, const Node &node, Rule rule, std::optional<T> &into) {
  T value{};
  if (!read(reading, node, rule, value))
    return false;
  into = std::move(value);
  return true;
}
template <class T> bool read(Reading &reading, const Node &node, Rule rule, std::vector<T> &into) {
  bool good = true;
  const auto one = [&](const Node &item) {
    T value{};
    if (read(reading, item, rule, value))
      into.push_back(std::move(value));
    else
      good = false;
  };
  if (node.kind == Node::Kind::list)
    for (const auto &item : node.items)
      one(item);
  else
    one(node);
  return good;
}

// Every text of a value that a surveyor composed, for checks of prose.
using SeeWords = std::function<void(const Words &)>;
template <class T> void each_words(const T &, const SeeWords &) {}
inline void each_words(const Words &words, const SeeWords &see) { see(words); }
inline void each_words(const Fact &fact, const SeeWords &see) { see(fact.text); }
inline void each_words(const std::string &text, const SeeWords &see) { see({text, {}}); }
inline void each_words(const Named &named, const SeeWords &see) {
  see({named.name, named.words.span});
  see(named.words);
}
inline void each_words(const Statement &statement, const SeeWords &see) { see(statement.text); }
inline void each_words(const Acknowledgement &answer, const SeeWords &see) { see(answer.reason); }
template <class T> void each_words(const std::optional<T> &value, const SeeWords &see) {
  if (value)
    each_words(*value, see);
}
template <class T> void each_words(const std::vector<T> &values, const SeeWords &see) {
  for (const auto &value : values)
    each_words(value, see);
}

} // namespace strakebook::survey
