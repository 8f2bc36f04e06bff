#include <locale>

#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/base/date.h"
#include "strakebook/base/decimal.h"
#include "strakebook/base/measured.h"
#include "strakebook/base/yaml_tree.h"

using namespace strakebook::base;

namespace {

/// Commas for decimals and points between thousands, as a global locale, as long as this lives.
class CommaLocale {
public:
  CommaLocale() : before_(std::locale::global(std::locale(std::locale(), new Commas))) {}
  ~CommaLocale() { std::locale::global(before_); }

private:
  struct Commas : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  std::locale before_;
};

} // namespace

TEST_CASE("a comma-decimal locale changes no number, in or out") {
  const CommaLocale commas;
  MeasuredError error;
  CHECK(parse_decimal("5.80") == Decimal{580, 2});
  CHECK_FALSE(parse_decimal("5,80"));
  CHECK(mm_text(Length::micrometres(12'345'678), 2) == "12345.68");
  CHECK(parse_measured("0.187 in", Unit::millimetre, error)->value == Length::nanometres(4'749'800));
  CHECK(iso({2026, 10, 14}) == "2026-10-14");
  Diagnostics sink;
  const auto file = testing::source_of(std::string(1233, '\n') + "a: 5.8\na: 1\n");
  CHECK(parse_yaml(file, sink).find("a")->text == "5.8");
  CHECK_THAT(terminal_text(sink), Catch::StartsWith("survey.yaml:1235:1: error SB0103:"));
  CHECK_THAT(json_text(sink), Catch::Contains("\"line\": 1235,"));
}
