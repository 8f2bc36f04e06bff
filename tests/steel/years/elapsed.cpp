#include <catch2/catch.hpp>

#include "compared.h"
#include "strakebook/steel/years/elapsed.h"

using namespace strakebook;
using sample::day;
using years::years_between;

// Worked by hand on the Gregorian calendar.
TEST_CASE("years are whole anniversaries and a share of the year that is under way") {
  CHECK(years_between(day("2021-10-14"), day("2026-10-14")) == base::Ratio{5, 1});
  CHECK(years_between(day("2021-10-14"), day("2026-10-16")) == base::Ratio{5 * 365 + 2, 365});
  CHECK(years_between(day("2021-10-14"), day("2026-10-13")) == base::Ratio{4 * 365 + 364, 365});
  CHECK(years_between(day("2023-03-01"), day("2024-02-29")) == base::Ratio{365, 366}); // through a leap day
  CHECK(years_between(day("2024-02-29"), day("2025-02-28")) == base::Ratio{1, 1});
  CHECK(years_between(day("2024-02-29"), day("2028-02-29")) == base::Ratio{4 * 366, 366});
  CHECK(years_between(day("2026-10-14"), day("2026-10-14")) == base::Ratio{0, 1});
}

TEST_CASE("a day so many days later") {
  CHECK(years::years_later(day("2026-10-14"), 0) == day("2026-10-14"));
  CHECK(years::years_later(day("2027-12-31"), 60.5 / 366) == day("2028-02-29"));
  CHECK(years::years_later(day("2026-10-14"), 1) == day("2027-10-14"));
}
