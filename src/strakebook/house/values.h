#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/decimal.h"
#include "strakebook/base/diagnostic.h"
#include "strakebook/base/geometry.h"
#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/house/unknown_name.h"
#include "strakebook/paper/style/style.h"

/// How each type of value is written in a layout. A read that fails has said why in the sink; then `into` is
/// as it was.
namespace strakebook::house {

using base::Diagnostics;
using base::YamlNode;

/// The text of a scalar; nullptr after reporting that it is none.
const std::string *scalar(const YamlNode &node, std::string_view expected, Diagnostics &sink);

bool read(const YamlNode &node, std::string &into, Diagnostics &sink);
bool read(const YamlNode &node, bool &into, Diagnostics &sink);          ///< yes, no
bool read(const YamlNode &node, int &into, Diagnostics &sink);           ///< a whole number from 0
bool read(const YamlNode &node, base::Decimal &into, Diagnostics &sink); ///< "1.645"
bool read(const YamlNode &node, base::Length &into, Diagnostics &sink);  ///< "4.0 mm": the unit is written
bool read(const YamlNode &node, base::Ratio &into, Diagnostics &sink);   ///< "20 %" or "0.8", from 0 to 1
bool read(const YamlNode &node, base::Pt &into, Diagnostics &sink);      ///< "22mm", "9.5pt"
bool read(const YamlNode &node, style::Tone &into, Diagnostics &sink);   ///< "#16191C"

/// The number before a percent sign: "5 %" is 5.
bool read_percent(const YamlNode &node, base::Decimal &into, Diagnostics &sink);

template <class T> bool read(const YamlNode &node, std::optional<T> &into, Diagnostics &sink) {
  T value{};
  if (!read(node, value, sink))
    return false;
  into = value;
  return true;
}

template <class T> bool read(const YamlNode &node, std::vector<T> &into, Diagnostics &sink) {
  if (node.kind != YamlNode::Kind::list) {
    sink.error(base::Code::wrong_kind, node.span, "a list is needed here", "a list", "[...]");
    return false;
  }
  std::vector<T> values;
  for (const YamlNode &item : node.items) {
    T value{};
    if (!read(item, value, sink))
      return false;
    values.push_back(std::move(value));
  }
  into = std::move(values);
  return true;
}

/// A closed list of words.
template <class E> struct Choice {
  std::string_view word;
  E value;
};

template <class E>
bool read_choice(const YamlNode &node, E &into, std::span<const Choice<E>> choices, Diagnostics &sink) {
  const std::string *text = scalar(node, "a word", sink);
  if (!text)
    return false;
  std::vector<std::string> known;
  for (const Choice<E> &choice : choices) {
    if (choice.word == *text) {
      into = choice.value;
      return true;
    }
    known.emplace_back(choice.word);
  }
  refuse_unknown(sink, base::Code::unknown_word, node.span, *text, "a word", known);
  return false;
}

/// The exact figure of any number that a layout may write ("4.0 mm", "20 %", "3"), for comparing two of one
/// kind.
std::optional<base::Ratio> figure_of(std::string_view text);

} // namespace strakebook::house
