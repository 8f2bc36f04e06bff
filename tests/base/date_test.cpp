#include "strakebook/base/date.h"

#include <catch2/catch.hpp>

using namespace strakebook::base;

TEST_CASE("a date is YYYY-MM-DD and a day that exists") {
  CHECK(parse_date("2026-10-14") == Date{2026, 10, 14});
  CHECK(parse_date("2024-02-29") == Date{2024, 2, 29});
  CHECK(parse_date("2000-02-29") == Date{2000, 2, 29});
  for (const char *text :
       {"2025-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-01-00", "0000-01-01",
        "2026-1-4", "14-10-2026", "2026/10/14", "2026-10-14 ", "2026-10-1x", "", "2026-10-14T00:00"}) {
    INFO(text);
    CHECK_FALSE(parse_date(text));
  }
  CHECK(iso({987, 6, 5}) == "0987-06-05");
}

TEST_CASE("months later is the same day or the last of a shorter month") {
  CHECK(months_later({2026, 10, 14}, 3) == Date{2027, 1, 14});
  CHECK(months_later({2026, 8, 31}, 6) == Date{2027, 2, 28});
  CHECK(months_later({2027, 8, 31}, 6) == Date{2028, 2, 29});
  CHECK(months_later({2026, 1, 31}, -2) == Date{2025, 11, 30});
  CHECK(months_later({2026, 12, 1}, 0) == Date{2026, 12, 1});
}
