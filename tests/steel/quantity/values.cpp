#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "strakebook/steel/quantity/quantity.h"

using namespace strakebook;
using quantity::value_text;

TEST_CASE("a value is printed with its decimals, and nought has no sign") {
  CHECK(value_text(942, 0) == "942");
  CHECK(value_text(19.2308, 3) == "19.231");
  CHECK(value_text(-0.25, 2) == "-0.25");
  CHECK(value_text(-0.0001, 2) == "0.00");
  CHECK(value_text(0, 0) == "0");
}

TEST_CASE("an input stands in one line with its unit and where it is from") {
  CHECK(quantity::text({.symbol = "A", .value = 20, .places = 2, .unit = "m2", .from = "S1"}) == "A 20.00 m2 (S1)");
  CHECK(quantity::text({.symbol = "Cw", .value = 0.9, .places = 2, .unit = {}, .from = {}}) == "Cw 0.90");
}

TEST_CASE("as JSON a quantity has its formula, its value as a number and its inputs") {
  const quantity::Quantity plate{.of = "S1", .formula = "steel-weight", .value = 942, .places = 0, .unit = "kg",
                                 .inputs = {{.symbol = "A", .value = 20, .places = 2, .unit = "m2", .from = "S1"}}};
  const auto all = quantity::json({plate});
  CHECK(all.dump() == R"([{"of":"S1","formula":"steel-weight","value":942.0,"unit":"kg","inputs":[{"symbol":"A","value":20.0,"unit":"m2","from":"S1"}]}])");
}
