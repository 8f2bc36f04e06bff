#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using sample::contains;

namespace {

std::string appendix(const sample::Composed &sample) { return sample::section_text(compose::compose(sample.source()), "appendices"); }

/// 20 m2 of 6 mm: 942 kg, at 7.85 kg per m2 and mm of mild steel.
sample::Composed with_plate() {
  auto sample = sample::small_survey();
  sample.outlook.quantities = {
      {.of = "S1", .formula = "steel-weight", .value = 942, .places = 0, .unit = "kg",
       .inputs = {{"A", 20, 2, "m2", "S1 size"}, {"t", 6, 1, "mm", "S1"}}},
      {.of = "all", .formula = "sinkage", .value = -0.25, .places = 2, .unit = "mm",
       .inputs = {{"W", -8, 0, "kg", ""}, {"rho", 1, 3, "t/m3", "policy"}, {"Aw", 31.8, 1, "m2", "hull"}}},
      {.of = "S2", .formula = "steel-weight", .value = 47.1, .places = 1, .unit = "kg", .inputs = {{"A", 1, 2, "m2", "S2 size"}, {"t", 6, 1, "mm", "S2"}}}};
  return sample;
}

} // namespace

TEST_CASE("a quantity stands in the appendix with its formula, its symbols and what went in") {
  const auto text = appendix(with_plate());
  INFO(text);
  CHECK(contains(text, "weight of the plate  W = 7.85 A t  A area in m², t thickness in mm"));
  CHECK(contains(text, "S1\n942 kg\nA 20.00 m² (S1 size), t 6.0 mm (S1)\n"));
  CHECK(contains(text, "S2\n47.1 kg\n"));
}

TEST_CASE("paper prints signs for their words, powers raised and the minus as a minus") {
  const auto text = appendix(with_plate());
  CHECK(contains(text, "s = W / (ρ Aw)"));
  CHECK(contains(text, "\u22120.25 mm"));
  CHECK(contains(text, "W \u22128 kg, ρ 1.000 t/m³ (policy), Aw 31.8 m² (hull)"));
  auto sample = with_plate();
  sample.outlook.quantities = {{.of = "S1", .formula = "plate-area", .value = 1, .places = 0, .unit = "m2", .inputs = {}}};
  CHECK(contains(appendix(sample), "A = L B \u2212 (4 \u2212 π) R²"));
}

TEST_CASE("a formula stands once, over everything that is reckoned by it") {
  const auto text = appendix(with_plate());
  CHECK(text.find("weight of the plate") == text.rfind("weight of the plate"));
}

TEST_CASE("without a quantity there is no table of them") {
  const auto sample = sample::small_survey();
  CHECK_FALSE(contains(appendix(sample), house::word(sample.house.wording, "quantities.head")));
}

TEST_CASE("every symbol of every formula can be printed as a formula's own") {
  auto sample = sample::small_survey();
  for (const auto &[id, formula] : sample.house.wording.formulas) {
    quantity::Quantity one{.of = "S1", .formula = id, .value = 1, .places = 0, .unit = {}, .inputs = {}};
    for (const auto &[symbol, meaning] : formula.inputs) one.inputs.push_back({symbol, 2, 0, "", ""});
    sample.outlook.quantities.push_back(one);
  }
  const auto text = appendix(sample);
  for (const auto &[symbol, sign] : sample.house.wording.signs) CHECK(contains(text, sign));
  CHECK_FALSE(contains(text, "beta"));
  CHECK_FALSE(contains(text, "^"));
}
