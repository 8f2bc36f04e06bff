#include "strakebook/base/ratio.h"

#include <limits>

#include <catch2/catch.hpp>

using namespace strakebook::base;

TEST_CASE("fractions compare exactly where doubles cannot") {
  CHECK(Ratio{1, 3} == Ratio{2, 6});
  CHECK(Ratio{-1, 2} < Ratio{-1, 3});
  const std::int64_t big = std::numeric_limits<std::int64_t>::max();
  CHECK(Ratio{big - 1, big} < Ratio{big, big});
  CHECK(Ratio{big, big - 1} < Ratio{big - 1, big - 2});
  // 1.8 of 6.0 is thirty percent, not under and not over; in doubles (6.0 - 4.2) / 6.0 is under 0.3.
  CHECK(ratio_of(Length::micrometres(1800), Length::millimetres(6)) == Ratio{30, 100});
  CHECK(ratio_of(Length::nanometres(1'800'001), Length::millimetres(6)) > Ratio{30, 100});
  CHECK(ratio_of(Length::nanometres(1'799'999), Length::millimetres(6)) < Ratio{30, 100});
  CHECK(complement({30, 100}) == Ratio{7, 10});
  CHECK_THROWS_AS(ratio_of(Length::millimetres(1), Length()), std::domain_error);
}

TEST_CASE("a limit is never lowered by rounding") {
  CHECK(scaled_up(Length::millimetres(6), {7, 10}) == Length::micrometres(4200));
  CHECK(scaled_up(Length::nanometres(10), {1, 3}) == Length::nanometres(4));
  CHECK(scaled_up(Length::nanometres(9), {1, 3}) == Length::nanometres(3));
  CHECK(scaled_up(Length::nanometres(-10), {1, 3}) == Length::nanometres(-3));
  CHECK_THROWS_AS(scaled_up(Length::nanometres(std::numeric_limits<std::int64_t>::max()), {2, 1}),
                  std::overflow_error);
}
