#include "strakebook/steel/survey/values.h"

#include "strakebook/steel/survey/unit_slip.h"

#include <fmt/format.h>

namespace strakebook::survey {

using base::Code;

namespace {

constexpr std::string_view decimal_pattern = "^-?(0|[1-9][0-9]*)(\\.[0-9]+)?$";
constexpr std::string_view length_pattern =
    "^((0|[1-9][0-9]*)(\\.[0-9]+)?( (mm|m|in|thou|ft|um))?|([1-9][0-9]* )?[1-9][0-9]*/[1-9][0-9]* in|\\.[0-9]+ in|"
    "[0-9]+ ft .+ in|[0-9]+' ?.+\")$";

Shape scalar_shape(std::string_view words, std::string_view example, std::string_view pattern = {}) {
  return {.words = std::string(words),
          .example = std::string(example),
          .pattern = std::string(pattern),
          .choices = {}};
}

/// A leading figure with a comma in it: 4,6.
bool decimal_comma(std::string_view text) {
  const auto comma = text.find(',');
  return comma != std::string_view::npos && comma > 0 && text.find_first_not_of("0123456789") == comma;
}
std::string with_point(std::string text) {
  text[text.find(',')] = '.';
  return text;
}

bool unit_needed(Rule rule) {
  return rule == Rule::unit_written || rule == Rule::unit_written_or_none || rule == Rule::position;
}

/// The value keeps its rule; `shown` is the text as written.
bool keeps(Reading &reading, const Node &node, Rule rule, base::Ratio value) {
  if (rule == Rule::percent && (value < base::Ratio{0, 1} || base::Ratio{100, 1} < value)) {
    reading.error(Code::out_of_range, node.span, fmt::format("{} is no share of a hundred", node.text),
                  "0 to 100");
    return false;
  }
  if (rule == Rule::positive && value <= base::Ratio{0, 1}) {
    reading.error(Code::out_of_range, node.span, fmt::format("{} is not more than nothing", node.text),
                  "more than 0");
    return false;
  }
  // Beyond these no figure of a hull lies, and what is reckoned from it would not be exact.
  constexpr base::Ratio least_figure{1, 100'000}, most_figure{10'000'000, 1};
  if (rule == Rule::positive && (value < least_figure || most_figure < value)) {
    reading.error(Code::out_of_range, node.span, fmt::format("{} is no figure of a hull", node.text), "0.00001 to 10000000");
    return false;
  }
  return true;
}

bool keeps(Reading &reading, const Node &node, Rule rule, const base::Measured &length) {
  const bool may_be_none = rule == Rule::depth || rule == Rule::unit_written_or_none;
  if (rule == Rule::position)
    return true;
  if (length.value < base::Length{} || (length.value == base::Length{} && !may_be_none)) {
    reading.error(Code::out_of_range, node.span, fmt::format("{} is not more than nothing", node.text),
                  may_be_none ? "0 or more" : "a length above 0");
    return false;
  }
  if ((rule == Rule::plate || rule == Rule::depth) && length.value > thickest_plate) {
    refuse_plate(reading, length, node.span);
    return false;
  }
  return true;
}

} // namespace

Shape shape_of(const std::string &, Rule) { return scalar_shape("a name", ""); }
Shape shape_of(const Words &, Rule rule) {
  if (rule == Rule::source)
    return scalar_shape("where it comes from: measured; told, WHO; document, WHICH", "told, owner",
                        "^(measured|told, .+|document, .+)$");
  return scalar_shape("a text", "");
}
Shape shape_of(const int &, Rule) { return scalar_shape("a whole number", "1", "^(0|[1-9][0-9]*)$"); }
Shape shape_of(const base::Decimal &, Rule rule) {
  return scalar_shape(rule == Rule::percent ? "a number of percent" : "a number",
                      rule == Rule::percent ? "25" : "16.2", decimal_pattern);
}
Shape shape_of(const base::Length &, Rule) {
  return scalar_shape("a length, in mm unless its unit is written", "0.10", length_pattern);
}
Shape shape_of(const base::Measured &, Rule rule) {
  return unit_needed(rule)
             ? scalar_shape("a length with its unit", "18.0 m", length_pattern)
             : scalar_shape("a length, in mm unless its unit is written", "6.0", length_pattern);
}
Shape shape_of(const base::Date &, Rule) {
  return scalar_shape("a date, YYYY-MM-DD", "2026-10-14", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
}

bool read(Reading &reading, const Node &node, Rule, std::string &into) {
  const auto *text = scalar(reading, node, "a name");
  if (text)
    into = *text;
  return text != nullptr;
}

bool read(Reading &reading, const Node &node, Rule rule, Words &into) {
  const auto *text = scalar(reading, node, "a text");
  if (!text)
    return false;
  if (rule == Rule::source && !read_source(reading, node))
    return false;
  const auto end = text->find_last_not_of(" \t\n"); // a block text ends with its line end
  into = {text->substr(0, end == std::string::npos ? 0 : end + 1), node.span};
  return true;
}

bool read(Reading &reading, const Node &node, Rule, int &into) {
  constexpr int most = 999'999;
  const auto *text = scalar(reading, node, "a whole number");
  if (!text)
    return false;
  const auto number = base::parse_decimal(*text);
  if (!number || number->places != 0) {
    reading.error(Code::bad_number, node.span, fmt::format("\"{}\" is not a whole number", *text),
                  "figures only, such as 17");
    return false;
  }
  if (number->digits < 1 || number->digits > most) {
    reading.error(Code::out_of_range, node.span, fmt::format("{} is outside its range", *text),
                  fmt::format("1 to {}", most));
    return false;
  }
  into = static_cast<int>(number->digits);
  return true;
}

bool read(Reading &reading, const Node &node, Rule rule, base::Decimal &into) {
  const auto *text = scalar(reading, node, "a number");
  if (!text)
    return false;
  const auto number = base::parse_decimal(*text);
  if (!number) {
    reading.error(Code::bad_number, node.span,
                  fmt::format("\"{}\" is not a number: {}", *text, base::why_not_decimal(*text)),
                  "figures with a decimal point", decimal_comma(*text) ? with_point(*text) : std::string{});
    return false;
  }
  if (!keeps(reading, node, rule, number->ratio()))
    return false;
  into = *number;
  return true;
}

bool read(Reading &reading, const Node &node, Rule rule, base::Measured &into) {
  const auto *text = scalar(reading, node, "a length");
  if (!text)
    return false;
  base::MeasuredError wrong;
  const auto length = base::parse_measured(*text, base::Unit::millimetre, wrong);
  if (!length) {
    reading.error(Code::bad_length, node.span, fmt::format("\"{}\" is not a length: {}", *text, wrong.found),
                  wrong.expected, decimal_comma(*text) ? with_point(*text) : std::string{});
    return false;
  }
  if (unit_needed(rule) && base::parse_decimal(*text)) {
    reading.error(Code::bad_length, node.span, fmt::format("\"{}\" has no unit beside it", *text),
                  "a length with its unit", fmt::format("{0} mm or {0} m, whichever it was", *text));
    return false;
  }
  if (!keeps(reading, node, rule, *length))
    return false;
  into = *length;
  return true;
}

bool read(Reading &reading, const Node &node, Rule rule, base::Length &into) {
  base::Measured length;
  if (!read(reading, node, rule, length))
    return false;
  into = length.value;
  return true;
}

bool read(Reading &reading, const Node &node, Rule, base::Date &into) {
  const auto *text = scalar(reading, node, "a date");
  if (!text)
    return false;
  const auto date = base::parse_date(*text);
  if (!date) {
    reading.error(Code::bad_date, node.span, fmt::format("\"{}\" is not a day of the calendar", *text),
                  "year, month, day: YYYY-MM-DD", "2026-10-14");
    return false;
  }
  into = *date;
  return true;
}

} // namespace strakebook::survey
