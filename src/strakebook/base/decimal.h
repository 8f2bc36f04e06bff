#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"

namespace strakebook::base {

/// A decimal as it was written: value = digits / 10^places. "5.80" is {580, 2}: trailing zeros are kept.
struct Decimal {
  std::int64_t digits = 0;
  int places = 0;

  bool operator==(const Decimal &) const = default;
  Ratio ratio() const; ///< the same value as an exact fraction
};

/// The one grammar by which text becomes a number: -?(0|[1-9][0-9]*)(\.[0-9]+)?, at most 15 digits. No sign '+',
/// no exponent, no comma, no blank, no leading zero, no trailing point, no nan or inf. nullopt: not a number here.
std::optional<Decimal> parse_decimal(std::string_view text);

/// Why parse_decimal refused, in words for a reader ("a decimal comma; write a point: 4.6"). Empty if it would not.
std::string why_not_decimal(std::string_view text);

/// value rounded to `places` decimals (0 to 18), half away from zero. This is the one rounding function of the product.
/// std::overflow_error where the figure does not fit into 64 bits.
Decimal round_to(Ratio value, int places);

/// "5.80", "-0.20". The minus is the ASCII hyphen; printers replace it.
std::string to_text(Decimal value);

/// A length in mm with `places` decimals, rounded by round_to: 5.8 mm, 2 places -> "5.80".
std::string mm_text(Length value, int places);

/// A length in mm with every digit it needs (at most 6 decimals) and at least `least` of them: "4.199999", "4.2".
std::string mm_exact(Length value, int least = 1);

/// A length in mm with at least `least` decimals, and one more for as long as the rounded figure would stand to `limit`,
/// or to `limit` rounded to the same decimals, in another order than the exact one does: never on it or across it, and
/// never beside it when it is exactly on it. 3.2258 against 3.225, least 2 -> "3.226"; 3.225 itself -> "3.225".
std::string mm_clear_of(Length value, Length limit, int least);

/// The fraction r in percent, without the sign, with `least` decimals or more, likewise kept clear of `limit` (a fraction
/// too): 0.296 against 0.30, least 0 -> "29.6".
std::string percent_clear_of(Ratio r, std::optional<Ratio> limit, int least);

} // namespace strakebook::base
