#include <fmt/format.h>

#include "strakebook/base/measured.h"

/// Feet and inches in one length. A foot is 12 in, an inch 25.4 mm exactly (international yard and pound, 1959; NIST SP 811).
namespace strakebook::base {
namespace {

constexpr std::string_view between = " ft ";
constexpr std::string_view last = " in";
constexpr std::string_view form = "feet and inches such as 12 ft 6 in";

/// "12'6\"" and "12' 6\"" spelled with the names of the units; any other text as it is.
std::string spelled_out(std::string_view text) {
  const std::size_t foot = text.find('\'');
  if (foot == text.npos || !text.ends_with('"'))
    return std::string(text);
  std::string_view inches = text.substr(foot + 1, text.size() - foot - 2);
  if (inches.starts_with(' '))
    inches.remove_prefix(1);
  return fmt::format("{}{}{}{}", text.substr(0, foot), between, inches, last);
}

} // namespace

bool feet_and_inches(std::string_view text) {
  return text.find(between) != text.npos || (text.find('\'') != text.npos && text.ends_with('"'));
}

std::optional<Measured> parse_feet_and_inches(std::string_view text, MeasuredError &error) {
  const std::string spelled = spelled_out(text);
  const std::size_t at = spelled.find(between);
  const std::string inches_text = at == spelled.npos ? std::string() : spelled.substr(at + between.size());
  if (inches_text.empty() || !inches_text.ends_with(last) || feet_and_inches(inches_text)) {
    error = {"feet without inches after them that end in \"in\"", std::string(form)};
    return std::nullopt;
  }
  const auto feet = parse_measured(spelled.substr(0, at) + " ft", Unit::foot, error);
  const auto inches = feet ? parse_measured(inches_text, Unit::inch, error) : std::nullopt;
  if (!inches)
    return std::nullopt;
  if (feet->places > 0 || feet->value < Length{}) {
    error = {"feet that are not a whole number before inches", std::string(form)};
    return std::nullopt;
  }
  if (inches->value < Length{} || inches->value >= Length::nanometres(304'800'000)) {
    error = {"inches that make a foot or more", "inches from 0 to under 12 after the feet"};
    return std::nullopt;
  }
  return Measured{feet->value + inches->value, std::string(text), Unit::foot, 0};
}

} // namespace strakebook::base
