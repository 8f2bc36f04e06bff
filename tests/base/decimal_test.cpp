#include "strakebook/base/decimal.h"

#include <catch2/catch.hpp>

using namespace strakebook::base;

TEST_CASE("one grammar makes text a number, and keeps the digits as written") {
  CHECK(parse_decimal("5.80") == Decimal{580, 2});
  CHECK(parse_decimal("0") == Decimal{0, 0});
  CHECK(parse_decimal("-0.20") == Decimal{-20, 2});
  CHECK(parse_decimal("123456789012345") == Decimal{123456789012345, 0});
  CHECK(to_text({580, 2}) == "5.80");
  CHECK(to_text({-20, 2}) == "-0.20");
  CHECK(to_text({5, 3}) == "0.005");
  CHECK(to_text({-7, 0}) == "-7");
}

TEST_CASE("what is not a number is refused, and the reason is one that a surveyor can act on") {
  struct Case {
    const char *text, *why;
  };
  const Case cases[] = {{"", "nothing is written"},
                        {"4,6", "a decimal comma; write a point: 4.6"},
                        {"1,234.5", "a comma in a number"},
                        {"+4.6", "plus sign"},
                        {"4.", "nothing after"},
                        {".5", "write 0 there"},
                        {"-.5", "write 0 there"},
                        {"04.6", "a leading zero"},
                        {"010", "a leading zero"},
                        {"1.2.3", "more than one decimal point"},
                        {"1e3", "an exponent"},
                        {"12.4 ", "a blank"},
                        {"1 2", "a blank"},
                        {".nan", "not a number"},
                        {"inf", "not a number"},
                        {"no-echo", "not a number"},
                        {"4.6?", "letters or signs"},
                        {"\u22124.6", "write the hyphen"},
                        {"1234567890123456", "more than 15 digits"},
                        {"0x1F", "letters or signs"},
                        {"-", "not a number"},
                        {"4-5", "not a number"}};
  for (const Case &c : cases) {
    INFO(c.text);
    CHECK_FALSE(parse_decimal(c.text));
    CHECK_THAT(why_not_decimal(c.text), Catch::Contains(c.why));
  }
  CHECK(why_not_decimal("4.6").empty());
}

TEST_CASE("rounding goes half away from zero, on both sides of the half and of zero") {
  CHECK(to_text(round_to({1, 8}, 2)) == "0.13");
  CHECK(to_text(round_to({-1, 8}, 2)) == "-0.13");
  CHECK(to_text(round_to({1249, 10000}, 2)) == "0.12");
  CHECK(to_text(round_to({2, 3}, 0)) == "1");
  CHECK(to_text(round_to({1, 3}, 3)) == "0.333");
  CHECK(to_text(round_to({-4, 1000}, 2)) == "0.00"); // no minus before nothing
  CHECK_THROWS_AS(round_to({1, 1}, 19), std::overflow_error);
  CHECK_THROWS_AS(round_to({100, 1}, 18), std::overflow_error);
  CHECK_THROWS_AS(round_to({1, 0}, 1), std::domain_error);
}

TEST_CASE("lengths print in millimetres with the digits asked for, or all of them") {
  CHECK(mm_text(Length::micrometres(5800), 2) == "5.80");
  CHECK(mm_text(Length::nanometres(-200'000), 1) == "-0.2");
  CHECK(mm_exact(Length::nanometres(4'199'999)) == "4.199999");
  CHECK(mm_exact(Length::nanometres(4'200'000)) == "4.2");
  CHECK(mm_exact(Length::millimetres(4), 2) == "4.00");
}

TEST_CASE("a printed length never rounds on to or across its limit") {
  const auto um = [](std::int64_t n) { return Length::nanometres(n); };
  CHECK(mm_clear_of(um(3'225'800), um(3'225'000), 2) == "3.226"); // 2 decimals would print both as 3.23
  CHECK(mm_clear_of(um(3'996'000), um(4'000'000), 2) == "3.996"); // 4.00 is the limit
  CHECK(mm_clear_of(um(3'994'000), um(4'000'000), 2) == "3.99");
  CHECK(mm_clear_of(um(4'004'000), um(4'000'000), 2) == "4.004");
  CHECK(mm_clear_of(um(4'005'000), um(4'000'000), 2) == "4.01");
  CHECK(mm_clear_of(um(3'999'999), um(4'000'000), 1) == "3.999999");
  CHECK(mm_clear_of(um(4'000'000), um(4'000'000), 2) == "4.00");  // on the limit is said to be on it
  CHECK(mm_clear_of(um(3'225'000), um(3'225'000), 2) == "3.225"); // 3.23 would be over it
  CHECK(mm_clear_of(um(3'300'000), um(3'225'000), 2) == "3.30");
}

TEST_CASE("a printed percentage never rounds on to or across its limit") {
  CHECK(percent_clear_of({298, 1000}, Ratio{30, 100}, 0) == "29.8");
  CHECK(percent_clear_of({246, 1000}, Ratio{25, 100}, 0) == "24.6");
  CHECK(percent_clear_of({244, 1000}, Ratio{25, 100}, 0) == "24");
  CHECK(percent_clear_of({30, 100}, Ratio{30, 100}, 0) == "30");
  CHECK(percent_clear_of({300'001, 1'000'000}, Ratio{30, 100}, 0) == "30.0001");
  CHECK(percent_clear_of({1, 3}, Ratio{1, 3}, 1) == "33.3"); // no decimal is on it: stop at what was asked
  CHECK(percent_clear_of({7, 30}, std::nullopt, 1) == "23.3");
  CHECK(percent_clear_of({-1, 100}, Ratio{20, 100}, 0) == "-1");
}
