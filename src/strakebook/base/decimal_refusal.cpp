#include <algorithm>
#include <string>

#include "strakebook/base/decimal.h"

namespace strakebook::base {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool has(std::string_view text, std::string_view any) { return text.find_first_of(any) != text.npos; }
bool only_of(std::string_view text, std::string_view set) { return text.find_first_not_of(set) == text.npos; }

bool leading_zero(std::string_view text) {
  const std::string_view rest = text.starts_with('-') ? text.substr(1) : text;
  return rest.size() > 1 && rest[0] == '0' && is_digit(rest[1]);
}

std::string comma_words(std::string_view text) {
  std::string point(text);
  std::replace(point.begin(), point.end(), ',', '.');
  if (parse_decimal(point))
    return "a decimal comma; write a point: " + point;
  return "a comma in a number; a number has digits and at most one point";
}

std::string shape_words(std::string_view text) {
  if (text.starts_with('+'))
    return "a plus sign before a number; leave it out";
  if (text.ends_with('.'))
    return "nothing after the decimal point";
  if (text.starts_with('.') || text.starts_with("-."))
    return "no digit before the decimal point; write 0 there";
  if (leading_zero(text))
    return "a leading zero; leave it out";
  if (std::count(text.begin(), text.end(), '.') > 1)
    return "more than one decimal point";
  if (std::count_if(text.begin(), text.end(), is_digit) > 15)
    return "more than 15 digits";
  return "not a number";
}

} // namespace

std::string why_not_decimal(std::string_view text) {
  if (parse_decimal(text))
    return "";
  if (text.empty())
    return "nothing is written where a number should be";
  if (has(text, " \t\r\n"))
    return "a blank in or beside a number";
  if (!std::any_of(text.begin(), text.end(), is_digit))
    return "not a number";
  if (text.starts_with("\u2212") || text.starts_with("\u2013"))
    return "a printed minus or dash; write the hyphen: -";
  if (only_of(text, "0123456789,.-") && has(text, ","))
    return comma_words(text);
  if (only_of(text, "0123456789.-+eE") && has(text, "eE"))
    return "an exponent; write the number out";
  if (!only_of(text, "0123456789.-+"))
    return "letters or signs in a number";
  return shape_words(text);
}

} // namespace strakebook::base
