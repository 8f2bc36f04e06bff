#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/length.h"

namespace strakebook::base {

enum class Unit { millimetre, metre, inch, thou, foot, micrometre };

std::string_view name_of(Unit unit); ///< "mm", "m", "in", "thou", "ft", "um"
std::optional<Unit> unit_named(std::string_view word);

bool unclear_unit(std::string_view word); ///< a sign that could be two units: mil, a single ' or "

/// A length as somebody wrote it: the exact value with the raw text kept beside it.
struct Measured {
  Length value;
  std::string raw;               ///< exactly as written, without the unit that was implied
  Unit unit = Unit::millimetre;  ///< the unit it was written in
  int places = 0;                ///< decimals in the raw text; 0 for a fraction

  bool operator==(const Measured &) const = default;
};

struct MeasuredError {
  std::string found;    ///< what is wrong with the text, in words
  std::string expected; ///< what would be right
};

/// Reads "5.8" (in `implied`), "5.8 mm", "0.187 in", ".187 in", "3/16 in", "1 1/4 in", "60 thou", "18.0 m", and feet with
/// inches: "12 ft 6 in", "12'6\"". A bare number takes `implied`; a fraction (halves to 64ths) and a bare point need inches.
/// One blank stands before a unit. A sign that could be two units is refused: ' or " alone, mil. At most 1000 m either way,
/// whole nanometres. Everything else is refused: error filled, nullopt returned.
std::optional<Measured> parse_measured(std::string_view text, Unit implied, MeasuredError &error);

/// Feet and inches together ("12 ft 6 in", "12'6\""): a form of its own, with more than one unit in it.
bool feet_and_inches(std::string_view text);
/// Reads that form exactly; inches from 0 to under 12.
std::optional<Measured> parse_feet_and_inches(std::string_view text, MeasuredError &error);

/// True where the unit stands in the raw text itself, so that nothing was implied.
bool unit_written(const Measured &length);

} // namespace strakebook::base
