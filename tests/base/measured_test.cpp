#include "strakebook/base/measured.h"

#include <catch2/catch.hpp>

#include "strakebook/base/decimal.h"

using namespace strakebook::base;

TEST_CASE("lengths are exact in every unit and keep what was written") {
  struct Case {
    const char *text;
    Unit implied;
    std::int64_t nm;
    Unit unit;
    int places;
  };
  // 1 in = 25.4 mm exactly (international inch, 1959); the rest is multiplication.
  const Case cases[] = {{"5.80", Unit::millimetre, 5'800'000, Unit::millimetre, 2},
                        {"5.8 mm", Unit::inch, 5'800'000, Unit::millimetre, 1},
                        {"0.187", Unit::inch, 4'749'800, Unit::inch, 3},
                        {"3/16 in", Unit::millimetre, 4'762'500, Unit::inch, 0},
                        {"5/16", Unit::inch, 7'937'500, Unit::inch, 0},
                        {"1/64 in", Unit::millimetre, 396'875, Unit::inch, 0},
                        {"60 thou", Unit::millimetre, 1'524'000, Unit::thou, 0},
                        {"18.0 m", Unit::millimetre, 18'000'000'000, Unit::metre, 1},
                        {".187", Unit::inch, 4'749'800, Unit::inch, 3},
                        {".187 in", Unit::millimetre, 4'749'800, Unit::inch, 3},
                        {"1 1/4 in", Unit::millimetre, 31'750'000, Unit::inch, 0},
                        {"1 1/4", Unit::inch, 31'750'000, Unit::inch, 0},
                        {"12 ft 6 in", Unit::metre, 3'810'000'000, Unit::foot, 0},
                        {"12'6\"", Unit::metre, 3'810'000'000, Unit::foot, 0},
                        {"12' 6\"", Unit::millimetre, 3'810'000'000, Unit::foot, 0},
                        {"0 ft 6 1/2 in", Unit::foot, 165'100'000, Unit::foot, 0},
                        {"12 ft 0.5 in", Unit::foot, 3'670'300'000, Unit::foot, 0},
                        {"2.5 ft", Unit::metre, 762'000'000, Unit::foot, 1},
                        {"300 um", Unit::millimetre, 300'000, Unit::micrometre, 0},
                        {"-0.2", Unit::metre, -200'000'000, Unit::metre, 1},
                        {"1000", Unit::metre, 1'000'000'000'000, Unit::metre, 0}};
  for (const Case &c : cases) {
    INFO(c.text);
    MeasuredError error;
    const auto m = parse_measured(c.text, c.implied, error);
    REQUIRE(m);
    CHECK(*m == Measured{Length::nanometres(c.nm), c.text, c.unit, c.places});
    CHECK(error.found.empty());
  }
}

TEST_CASE("text that is not a length is refused with what was found and what was expected") {
  struct Case {
    const char *text, *found, *expected;
  };
  const Case cases[] = {{"4,6", "a decimal comma; write a point: 4.6", "a length such as"},
                        {"4.6 cm", "\"cm\" is not a unit", "one of mm, m, in, thou, ft"},
                        {"4.6mm", "no blank between the figure and its unit", "4.6 mm"},
                        {"4.6  mm", "a blank", "a length such as"},
                        {"3/16", "a fraction in mm", "3/16 in"},
                        {"3/16in", "no blank", "3/16 in"},
                        {"3/16 mm", "a fraction in mm", "inches after a fraction"},
                        {"3/10 in", "parts of 10", "64ths"},
                        {"1/128 in", "parts of 128", "64ths"},
                        {"3/1 in", "parts of 1", "halves"},
                        {"0/16 in", "not a fraction of two whole numbers", "3/16 in"},
                        {"1 3/16", "a fraction in mm", "1 3/16 in"},
                        {"1 5/4 in", "more than an inch", "1 1/4 in"},
                        {"1.5 1/4 in", "not a fraction", "3/16 in"},
                        {".187", "no digit before the decimal point", "a length such as"},
                        {"60 mil", "a thousandth of an inch or a millimetre", "60 thou, or 60 mm"},
                        {"60 mils", "thousandths of an inch or millimetres", "60 thou, or 60 mm"},
                        {"12'", "feet or minutes", "12 ft"},
                        {"6\"", "inches or \"the same as above\"", "6 in"},
                        {"12'6", "letters or signs", "a length such as"},
                        {"12 ft 6", "feet without inches", "12 ft 6 in"},
                        {"12 ft 6 mm", "feet without inches", "12 ft 6 in"},
                        {"12 ft 12 in", "a foot or more", "under 12"},
                        {"12 ft -1 in", "a foot or more", "under 12"},
                        {"-12 ft 6 in", "not a whole number", "12 ft 6 in"},
                        {"1.5 ft 6 in", "not a whole number", "12 ft 6 in"},
                        {"1 ft 2 ft 3 in", "feet without inches", "12 ft 6 in"},
                        {"5/16? in", "not a fraction", "3/16 in"},
                        {"1000.1 m", "more than 1000 m", "at most 1000 m"},
                        {"-1000.1 m", "more than 1000 m", "at most 1000 m"},
                        {"0.0000001 mm", "finer than", "no more digits"},
                        {"no-echo", "not a number", "a length such as"},
                        {"", "nothing is written", "a length such as"},
                        {"mm", "not a number", "a length such as"}};
  for (const Case &c : cases) {
    INFO(c.text);
    MeasuredError error;
    CHECK_FALSE(parse_measured(c.text, Unit::millimetre, error));
    CHECK_THAT(error.found, Catch::Contains(c.found));
    CHECK_THAT(error.expected, Catch::Contains(c.expected));
  }
}

TEST_CASE("units are known by one name each") {
  for (const Unit unit : {Unit::millimetre, Unit::metre, Unit::inch, Unit::thou, Unit::foot, Unit::micrometre})
    CHECK(unit_named(name_of(unit)) == unit);
  CHECK_FALSE(unit_named("MM"));
  CHECK_FALSE(unit_named(""));
}

// International inch: 25.4 mm exactly (NIST SP 811, Appendix B; BIPM SI brochure: 1 in = 25 400 000 nm).
TEST_CASE("every 64th of an inch and every thou is exact in millimetres, and comes back") {
  const auto nm_of = [](const std::string &text) {
    MeasuredError error;
    const auto read = parse_measured(text, Unit::inch, error);
    INFO(text << ": " << error.found);
    REQUIRE(read);
    return read->value.nm();
  };
  for (std::int64_t i = 1; i <= 64 * 3; ++i) {
    const std::int64_t nm = i * 396'875; // 25 400 000 / 64
    const std::string whole = i / 64 > 0 ? std::to_string(i / 64) + " " : "";
    if (i % 64 > 0)
      CHECK(nm_of(whole + std::to_string(i % 64) + "/64 in") == nm);
    CHECK(nm_of(mm_exact(Length::nanometres(nm)) + " mm") == nm);
    CHECK(nm * 64 == i * 25'400'000);
  }
  for (std::int64_t i = 1; i <= 3000; ++i) {
    const std::int64_t nm = i * 25'400;
    CHECK(nm_of(std::to_string(i) + " thou") == nm);
    CHECK(nm_of(to_text({i, 3})) == nm);
    CHECK(nm_of(mm_exact(Length::nanometres(nm)) + " mm") == nm);
    CHECK(nm / 25'400 == i);
  }
}

TEST_CASE("whether a unit was written is told by the raw text") {
  MeasuredError error;
  for (const char *text : {"5.8 mm", "1 1/4 in", "12 ft 6 in", "12'6\"", ".187 in"})
    CHECK(unit_written(parse_measured(text, Unit::millimetre, error).value()));
  for (const char *text : {"5.8", ".187", "3/16", "1 1/4"})
    CHECK_FALSE(unit_written(parse_measured(text, Unit::inch, error).value()));
}
