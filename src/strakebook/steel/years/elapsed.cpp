#include "strakebook/steel/years/elapsed.h"

#include <chrono>
#include <cmath>

namespace strakebook::years {

namespace {

std::chrono::sys_days serial(base::Date date) {
  return std::chrono::year_month_day{std::chrono::year{date.year}, std::chrono::month{static_cast<unsigned>(date.month)},
                                     std::chrono::day{static_cast<unsigned>(date.day)}};
}

std::int64_t days_between(base::Date from, base::Date to) { return (serial(to) - serial(from)).count(); }

} // namespace

base::Ratio years_between(base::Date from, base::Date to) {
  int whole = to.year - from.year;
  const auto anniversary = [&](int n) { return base::months_later(from, 12 * n); };
  if (to < anniversary(whole)) --whole;
  const std::int64_t year = days_between(anniversary(whole), anniversary(whole + 1));
  return base::reduced({whole * year + days_between(anniversary(whole), to), year});
}

base::Date years_later(base::Date day, double years) {
  const double whole = std::floor(years);
  const base::Date last = base::months_later(day, 12 * static_cast<int>(whole));
  const base::Date next = base::months_later(day, 12 * (static_cast<int>(whole) + 1));
  const double over = (years - whole) * static_cast<double>(days_between(last, next));
  const std::chrono::year_month_day later(serial(last) + std::chrono::days{static_cast<int>(over)});
  return {static_cast<int>(later.year()), static_cast<int>(static_cast<unsigned>(later.month())),
          static_cast<int>(static_cast<unsigned>(later.day()))};
}

} // namespace strakebook::years
