#include "strakebook/base/date.h"

#include <algorithm>

#include <fmt/format.h>

namespace strakebook::base {
namespace {

bool leap(int year) { return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0; }

int days_in(int year, int month) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && leap(year) ? 29 : days[month - 1];
}

bool digits_at(std::string_view text, std::size_t at, std::size_t count) {
  const std::string_view part = text.substr(at, count);
  return std::all_of(part.begin(), part.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int number_at(std::string_view text, std::size_t at, std::size_t count) {
  int n = 0;
  for (const char c : text.substr(at, count))
    n = n * 10 + (c - '0');
  return n;
}

} // namespace

std::optional<Date> parse_date(std::string_view iso) {
  if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-')
    return std::nullopt;
  if (!digits_at(iso, 0, 4) || !digits_at(iso, 5, 2) || !digits_at(iso, 8, 2))
    return std::nullopt;
  const Date d{number_at(iso, 0, 4), number_at(iso, 5, 2), number_at(iso, 8, 2)};
  if (d.year < 1 || d.month < 1 || d.month > 12 || d.day < 1 || d.day > days_in(d.year, d.month))
    return std::nullopt;
  return d;
}

std::string iso(Date date) { return fmt::format("{:04}-{:02}-{:02}", date.year, date.month, date.day); }

Date months_later(Date date, int months) {
  const int count = date.year * 12 + (date.month - 1) + months;
  const int year = count >= 0 ? count / 12 : (count - 11) / 12;
  const int month = count - year * 12 + 1;
  return {year, month, std::min(date.day, days_in(year, month))};
}

} // namespace strakebook::base
