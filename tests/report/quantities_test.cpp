#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "report/examples_support.h"

using namespace strakebook;

namespace {

Case example(const std::string &name) {
  base::Diagnostics sink;
  auto found = open_case(std::filesystem::path(STRAKEBOOK_ROOT) / "example-surveys" / name / "survey.yaml", installed_resources(), sink);
  REQUIRE(found);
  return std::move(*found);
}

/// An example that reckons one thing, under names that a spreadsheet would take for formulas.
Case hostile() {
  auto one = example("clean-boat");
  one.outlook.quantities = {{.of = "=cmd|' /C calc'!A0", .formula = "net-weight", .value = -12.5, .places = 1, .unit = "kg",
                             .inputs = {{"W", 47.1, 1, "kg", "a \"plate\""}, {"Wr", 59.6, 1, "kg", "@SUM(A1:A9)"}}}};
  return one;
}

} // namespace

TEST_CASE("what a room of the steel reckons, the layout explains, symbol by symbol") {
  for (const auto &name : examples::names()) {
    const auto one = example(name);
    for (const auto &quantity : one.outlook.quantities) {
      INFO(name << ": " << quantity.of << " by " << quantity.formula);
      const auto formula = one.house.wording.formulas.find(quantity.formula);
      REQUIRE(formula != one.house.wording.formulas.end());
      std::map<std::string, int> given;
      for (const auto &input : quantity.inputs) ++given[input.symbol];
      for (const auto &[symbol, meaning] : formula->second.inputs) CHECK(given[symbol] == 1);
      CHECK(given.size() == formula->second.inputs.size());
    }
  }
}

// RFC 4180; what a spreadsheet takes for a formula: OWASP, CSV injection
TEST_CASE("as CSV no text is a formula, and a negative weight stays a number") {
  CHECK(quantities_csv(hostile()) == "of,quantity,value,unit,formula,inputs\r\n"
                                     "'=cmd|' /C calc'!A0,weight that the hull gains,-12.5,kg,N = W - Wr,"
                                     "\"W 47.1 kg (a \"\"plate\"\"); Wr 59.6 kg (@SUM(A1:A9))\"\r\n");
}

TEST_CASE("as JSON every quantity has its formula in words and as an equation") {
  const auto all = nlohmann::json::parse(quantities_json(hostile()));
  REQUIRE(all["quantities"].size() == 1);
  const auto &one = all["quantities"][0];
  CHECK(one["of"] == "=cmd|' /C calc'!A0");
  CHECK(one["value"] == -12.5);
  CHECK(one["name"] == "weight that the hull gains");
  CHECK(one["text"] == "N = W - Wr");
  CHECK(one["symbols"]["Wr"] == "weight of the steel taken out in kg");
  CHECK(one["inputs"][0]["symbol"] == "W");
}

TEST_CASE("in plain text a quantity stands over its formula and what went in") {
  CHECK(quantities_text(hostile()) == "=cmd|' /C calc'!A0: weight that the hull gains -12.5 kg\n"
                                      "    N = W - Wr    W 47.1 kg (a \"plate\"), Wr 59.6 kg (@SUM(A1:A9))\n");
  auto nothing = hostile();
  nothing.outlook.quantities.clear();
  CHECK(quantities_text(nothing).find("Nothing is reckoned here") == 0);
}
