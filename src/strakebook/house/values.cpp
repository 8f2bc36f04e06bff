#include "strakebook/house/values.h"

#include <fmt/format.h>

#include "strakebook/base/measured.h"
#include "strakebook/base/text.h"

namespace strakebook::house {
namespace {

using base::Code;

constexpr double points_per_mm = 72.0 / 25.4;
constexpr double longest_paper = 5000; // points; no sheet is longer
constexpr int most_count = 1'000'000;

double approximate(base::Ratio r) { return static_cast<double>(r.num) / static_cast<double>(r.den); }

/// The text without its last letters if it ends with them.
std::optional<std::string_view> before(std::string_view text, std::string_view ending) {
  if (!text.ends_with(ending))
    return std::nullopt;
  return base::trimmed(text.substr(0, text.size() - ending.size()));
}

std::optional<base::Ratio> share_of(std::string_view text) {
  const auto percent = before(text, "%");
  const auto number = base::parse_decimal(percent.value_or(text));
  if (!number)
    return std::nullopt;
  base::Ratio share = number->ratio();
  if (percent)
    share.den *= 100;
  return share;
}

std::optional<int> hex_pair(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    const std::string_view digits = "0123456789ABCDEF";
    const auto at = digits.find(c);
    if (at == digits.npos)
      return std::nullopt;
    value = value * 16 + static_cast<int>(at);
  }
  return value;
}

} // namespace

const std::string *scalar(const YamlNode &node, std::string_view expected, Diagnostics &sink) {
  if (node.kind == YamlNode::Kind::scalar && !node.text.empty())
    return &node.text;
  const bool empty = node.kind == YamlNode::Kind::empty || node.kind == YamlNode::Kind::scalar;
  sink.error(empty ? Code::empty_value : Code::wrong_kind, node.span,
             empty ? "nothing is written here" : "a single value is needed here", std::string(expected));
  return nullptr;
}

bool read(const YamlNode &node, std::string &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "text", sink);
  if (!text)
    return false;
  into = *text;
  while (into.ends_with('\n'))
    into.pop_back();
  return true;
}

bool read(const YamlNode &node, bool &into, Diagnostics &sink) {
  static constexpr Choice<bool> choices[] = {{"yes", true}, {"no", false}};
  return read_choice<bool>(node, into, choices, sink);
}

bool read(const YamlNode &node, base::Decimal &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a number", sink);
  if (!text)
    return false;
  const auto number = base::parse_decimal(*text);
  if (!number) {
    sink.error(Code::bad_number, node.span, fmt::format("\"{}\" is not a number", *text),
               base::why_not_decimal(*text));
    return false;
  }
  into = *number;
  return true;
}

bool read(const YamlNode &node, int &into, Diagnostics &sink) {
  base::Decimal number;
  if (!read(node, number, sink))
    return false;
  if (number.places != 0 || number.digits < 0 || number.digits > most_count) {
    sink.error(Code::out_of_range, node.span, fmt::format("{} is not a count", node.text),
               fmt::format("a whole number from 0 to {}", most_count));
    return false;
  }
  into = static_cast<int>(number.digits);
  return true;
}

bool read(const YamlNode &node, base::Length &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a length with its unit", sink);
  if (!text)
    return false;
  if (text->find_first_of("mitf") == text->npos) {
    sink.error(Code::bad_length, node.span, fmt::format("\"{}\" has no unit", *text),
               "a length with its unit", *text + " mm");
    return false;
  }
  base::MeasuredError error;
  const auto measured = base::parse_measured(*text, base::Unit::millimetre, error);
  if (!measured) {
    sink.error(Code::bad_length, node.span, error.found, error.expected);
    return false;
  }
  into = measured->value;
  return true;
}

bool read(const YamlNode &node, base::Ratio &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a share such as 20 % or 0.8", sink);
  if (!text)
    return false;
  const auto share = share_of(*text);
  if (!share) {
    sink.error(Code::bad_number, node.span, fmt::format("\"{}\" is not a share", *text),
               "a share such as 20 % or 0.8");
    return false;
  }
  if (share->num < 0 || *share > base::Ratio{1, 1}) {
    sink.error(Code::out_of_range, node.span, fmt::format("{} is not a part of a whole", *text),
               "from 0 to 1, or 0 to 100 %");
    return false;
  }
  into = *share;
  return true;
}

bool read_percent(const YamlNode &node, base::Decimal &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a percentage", sink);
  if (!text)
    return false;
  const auto figure = before(*text, "%");
  const auto number = figure ? base::parse_decimal(*figure) : std::nullopt;
  if (!number) {
    sink.error(Code::bad_number, node.span, fmt::format("\"{}\" is not a percentage", *text),
               "a percentage such as 5 %");
    return false;
  }
  into = *number;
  return true;
}

bool read(const YamlNode &node, base::Pt &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a length on paper such as 22mm or 9.5pt", sink);
  if (!text)
    return false;
  const auto mm = before(*text, "mm");
  const auto figure = mm ? mm : before(*text, "pt");
  const auto number = figure ? base::parse_decimal(*figure) : std::nullopt;
  if (!number) {
    sink.error(Code::bad_length, node.span, fmt::format("\"{}\" is not a length on paper", *text),
               "such as 22mm or 9.5pt");
    return false;
  }
  const double points = approximate(number->ratio()) * (mm ? points_per_mm : 1.0);
  if (points < 0 || points > longest_paper) {
    sink.error(Code::out_of_range, node.span, fmt::format("{} is not a length on any page", *text),
               fmt::format("from 0pt to {}pt", longest_paper));
    return false;
  }
  into = {points};
  return true;
}

bool read(const YamlNode &node, style::Tone &into, Diagnostics &sink) {
  const std::string *text = scalar(node, "a tone such as '#16191C'", sink);
  if (!text)
    return false;
  const std::string_view hex = *text;
  std::optional<int> red, green, blue;
  if (hex.size() == 7 && hex.front() == '#') {
    red = hex_pair(hex.substr(1, 2));
    green = hex_pair(hex.substr(3, 2));
    blue = hex_pair(hex.substr(5, 2));
  }
  if (!red || !green || !blue) {
    sink.error(Code::bad_number, node.span, fmt::format("\"{}\" is not a tone", hex),
               "# and six digits 0-9 A-F, in quotes, such as '#16191C'");
    return false;
  }
  into = {*red / 255.0, *green / 255.0, *blue / 255.0};
  return true;
}

std::optional<base::Ratio> figure_of(std::string_view text) {
  if (const auto share = share_of(text))
    return share;
  base::MeasuredError error;
  if (const auto length = base::parse_measured(text, base::Unit::millimetre, error))
    return base::Ratio{length->value.nm(), 1};
  return std::nullopt;
}

} // namespace strakebook::house
