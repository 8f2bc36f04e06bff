#include "strakebook/base/measured.h"

#include <algorithm>
#include <array>
#include <bit>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/base/wide.h"

namespace strakebook::base {
namespace {

struct UnitFacts {
  Unit unit;
  std::string_view name;
  std::int64_t nm;
};

// International inch (1959): 25.4 mm exactly; a foot is 12, a thou 1/1000 of it.
constexpr std::array<UnitFacts, 6> units{{{Unit::millimetre, "mm", 1'000'000},
                                          {Unit::metre, "m", 1'000'000'000},
                                          {Unit::inch, "in", 25'400'000},
                                          {Unit::thou, "thou", 25'400},
                                          {Unit::foot, "ft", 304'800'000},
                                          {Unit::micrometre, "um", 1'000}}};

constexpr Wide longest_nm = static_cast<Wide>(1'000) * 1'000'000'000;
constexpr std::int64_t finest_fraction = 64;
constexpr std::int64_t most_whole_inches = 100'000; // beyond it the length is refused anyway
constexpr std::string_view forms = "a length such as 5.8, 5.8 mm, 0.187 in, 3/16 in, 60 thou or 18.0 m";

bool fraction(std::string_view text) { return text.find('/') != text.npos; }

const UnitFacts &facts_of(Unit unit) {
  for (const UnitFacts &u : units)
    if (u.unit == unit)
      return u;
  __builtin_unreachable();
}

struct Split {
  std::string_view figure, unit;
};

/// The last word is the unit, unless it is the fraction of "1 1/4".
Split split(std::string_view text) {
  const std::size_t blank = text.rfind(' ');
  if (blank == text.npos || fraction(text.substr(blank)))
    return {text, {}};
  return {text.substr(0, blank), text.substr(blank + 1)};
}

struct Figure {
  Ratio value;
  int places = 0;
};

std::optional<std::int64_t> whole_number(std::string_view text) {
  const auto d = parse_decimal(text);
  if (!d || d->places > 0 || d->digits <= 0)
    return std::nullopt;
  return d->digits;
}

/// "3/16", or "1 1/4" with whole inches before it.
std::optional<Figure> parse_fraction(std::string_view text, Unit unit, MeasuredError &error) {
  const std::size_t blank = text.find(' ');
  const std::string_view part = blank == text.npos ? text : text.substr(blank + 1);
  const std::size_t stroke = part.find('/');
  const auto over = whole_number(part.substr(0, stroke));
  const auto under = whole_number(part.substr(stroke + 1));
  const auto before = blank == text.npos ? std::optional<std::int64_t>(0) : whole_number(text.substr(0, blank));
  if (!over || !under || !before || *before > most_whole_inches) {
    error = {"not a fraction of two whole numbers", "a fraction such as 3/16 in"};
  } else if (unit != Unit::inch) {
    error = {fmt::format("a fraction in {}", name_of(unit)),
             fmt::format("inches after a fraction: {} in", text)};
  } else if (*under > finest_fraction || !std::has_single_bit(static_cast<std::uint64_t>(*under)) ||
             *under == 1) {
    error = {fmt::format("a fraction in parts of {}", *under),
             "halves, quarters, 8ths, 16ths, 32nds or 64ths of an inch"};
  } else if (*before > 0 && *over >= *under) {
    error = {fmt::format("{} after a whole number is more than an inch", part), "whole inches and a part of one: 1 1/4 in"};
  } else {
    return Figure{{*before * *under + *over, *under}, 0};
  }
  return std::nullopt;
}

std::optional<Figure> parse_figure(std::string_view text, Unit unit, MeasuredError &error) {
  if (fraction(text))
    return parse_fraction(text, unit, error);
  const bool bare_point = unit == Unit::inch && text.starts_with('.'); // as notebooks write it
  if (const auto d = parse_decimal(bare_point ? "0" + std::string(text) : std::string(text)))
    return Figure{d->ratio(), d->places};
  error = {why_not_decimal(text), std::string(forms)};
  return std::nullopt;
}

std::string unit_names() {
  std::string names;
  for (const UnitFacts &u : units)
    names += (names.empty() ? "" : ", ") + std::string(u.name);
  return names;
}

/// A sign that could be two units, with what each would be written as.
struct Unclear {
  std::string_view sign, could_be, write;
};
constexpr std::array<Unclear, 4> unclear{
    {{"mils", "thousandths of an inch or millimetres", "60 thou, or 60 mm"},
     {"mil", "a thousandth of an inch or a millimetre", "60 thou, or 60 mm"},
     {"\"", "inches or \"the same as above\"", "6 in, or 12 ft 6 in"},
     {"'", "feet or minutes", "12 ft, or 12 ft 6 in"}}};

bool sign_could_be_two(std::string_view text, MeasuredError &error) {
  for (const Unclear &u : unclear)
    if (text.ends_with(u.sign)) {
      error = {fmt::format("\"{}\" could be {}", u.sign, u.could_be), std::string(u.write)};
      return true;
    }
  return false;
}

/// The unit written after a figure, or `implied`. A unit that touches its figure is told apart from one not
/// known.
std::optional<Unit> unit_of(const Split &parts, Unit implied, MeasuredError &error) {
  if (!parts.unit.empty()) {
    if (const auto unit = unit_named(parts.unit))
      return unit;
    error = {fmt::format("\"{}\" is not a unit of length here", parts.unit), "one of " + unit_names()};
    return std::nullopt;
  }
  for (const UnitFacts &u : units) {
    if (!parts.figure.ends_with(u.name))
      continue;
    const std::string_view figure = parts.figure.substr(0, parts.figure.size() - u.name.size());
    if (!parse_decimal(figure) && !fraction(figure))
      continue;
    error = {"no blank between the figure and its unit", fmt::format("{} {}", figure, u.name)};
    return std::nullopt;
  }
  return implied;
}

} // namespace

std::string_view name_of(Unit unit) { return facts_of(unit).name; }

std::optional<Unit> unit_named(std::string_view word) {
  for (const UnitFacts &u : units)
    if (u.name == word)
      return u.unit;
  return std::nullopt;
}

bool unclear_unit(std::string_view word) {
  return std::any_of(unclear.begin(), unclear.end(), [&](const Unclear &u) { return u.sign == word; });
}

std::optional<Measured> parse_measured(std::string_view text, Unit implied, MeasuredError &error) {
  error = {};
  if (feet_and_inches(text))
    return parse_feet_and_inches(text, error);
  if (sign_could_be_two(text, error))
    return std::nullopt;
  const Split parts = split(text);
  const auto unit = unit_of(parts, implied, error);
  if (!unit)
    return std::nullopt;
  const auto figure = parse_figure(parts.figure, *unit, error);
  if (!figure)
    return std::nullopt;
  const Wide product = static_cast<Wide>(figure->value.num) * facts_of(*unit).nm;
  if (product % figure->value.den != 0) {
    error = {"a length finer than a millionth of a millimetre", "no more digits than a gauge can show"};
    return std::nullopt;
  }
  const Wide nm = product / figure->value.den;
  if (nm > longest_nm || nm < -longest_nm) {
    error = {"a length of more than 1000 m", "a length of at most 1000 m; is the unit right?"};
    return std::nullopt;
  }
  return Measured{Length::nanometres(narrow(nm)), std::string(text), *unit, figure->places};
}

bool unit_written(const Measured &length) {
  const std::size_t blank = length.raw.rfind(' ');
  return feet_and_inches(length.raw) || (blank != length.raw.npos && unit_named(length.raw.substr(blank + 1)));
}

} // namespace strakebook::base
