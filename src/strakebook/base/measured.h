#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/length.h"

namespace strakebook::base {

enum class Unit { millimetre, metre, inch, thou, foot, micrometre };

std::string_view name_of(Unit unit); ///< "mm", "m", "in", "thou", "ft", "um"
std::optional<Unit> unit_named(std::string_view word);

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

/// Reads "5.8" (in `implied`), "5.8 mm", "0.187 in", "3/16 in", "60 thou", "18.0 m". A bare number takes `implied`; a
/// fraction (halves to 64ths) needs inches. One blank stands before a unit. At most 1000 m either way, whole nanometres.
/// Everything else is refused: error filled, nullopt returned.
std::optional<Measured> parse_measured(std::string_view text, Unit implied, MeasuredError &error);

} // namespace strakebook::base
