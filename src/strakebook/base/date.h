#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace strakebook::base {

/// A calendar date (proleptic Gregorian), always valid when it came from parse_date.
struct Date {
  int year = 0, month = 0, day = 0;
  auto operator<=>(const Date &) const = default;
};

std::optional<Date> parse_date(std::string_view iso); ///< exactly YYYY-MM-DD, a day that exists
std::string iso(Date date);                           ///< "2026-10-14"
Date months_later(Date date, int months);             ///< same day, or the last day of a shorter month

} // namespace strakebook::base
