#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;
using base::Diagnostics;

namespace {

std::optional<house::House> read(const std::string &body, Diagnostics &sink) { return test::Layouts().extended(body, sink); }

void refused(const std::string &body, Code code, const std::string &part) {
  INFO(body);
  Diagnostics sink;
  CHECK_FALSE(read(body, sink));
  test::check_only(sink, code, part);
}

} // namespace

TEST_CASE("every formula has a name, an equation, its symbols and a source") {
  Diagnostics sink;
  const auto house = test::shipped("base", sink);
  REQUIRE(house);
  const auto &formulas = house->wording.formulas;
  // what is printed of steel to buy, of floating, of coating and anodes, and of the unseen
  for (const char *id : {"plate-area", "steel-weight", "removed-weight", "net-weight", "weld-length", "plug-count", "waterplane",
                         "sinkage", "tpc", "moment", "trim-hint", "freeboard-after", "downflooding-after", "paint-volume",
                         "anode-current", "anode-mass", "anode-count", "beam-over-all", "return-period", "return-level",
                         "touched-share"}) {
    INFO(id);
    REQUIRE(formulas.count(id) == 1);
    CHECK_FALSE(formulas.at(id).name.empty());
    CHECK_FALSE(formulas.at(id).inputs.empty());
    CHECK_FALSE(formulas.at(id).source.empty());
  }
  CHECK(house->wording.signs.at("rho") == "ρ");
}

TEST_CASE("the weight of steel in a formula is the policy's") {
  Diagnostics sink;
  const auto house = test::shipped("base", sink);
  REQUIRE(house);
  CHECK(house->wording.formulas.at("steel-weight").text == "W = 7.85 A t"); // mild steel, 7850 kg/m3
  const auto heavier = read("policy: {steel-density: '7.9'}", sink);
  REQUIRE(heavier);
  CHECK(heavier->wording.formulas.at("steel-weight").text == "W = 7.9 A t");
}

TEST_CASE("a layout rewords a formula") {
  Diagnostics sink;
  const auto house = read("formulas: {sinkage: {name: how far she sinks, inputs: {W: what she gains in kg}}}", sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  const auto &sinkage = house->wording.formulas.at("sinkage");
  CHECK(sinkage.name == "how far she sinks");
  CHECK(sinkage.text == "s = W / (rho Aw)");
  CHECK(sinkage.inputs.at("W") == "what she gains in kg");
  CHECK(sinkage.inputs.at("Aw") == "area of the waterplane in m2");
}

TEST_CASE("a formula is not dropped, emptied or invented") {
  refused("formulas: {sinkage: }", Code::layout_loosens, "sinkage");
  refused("formulas: {sinkage: {source: ''}}", Code::layout_loosens, "source");
  refused("formulas: {drop: [sinkage]}", Code::layout_loosens, "drop");
  refused("formulas: {sinkige: {name: x}}", Code::unknown_key, "sinkage");
  refused("formula-signs: {ro: r}", Code::unknown_key, "rho");
}

TEST_CASE("a formula explains the symbols that it has, and no others") {
  refused("formulas: {sinkage: {text: s = k W / (rho Aw)}}", Code::formula_symbol, "k");
  refused("formulas: {sinkage: {text: s = W / rho}}", Code::formula_symbol, "Aw");
  refused("formulas: {sinkage: {inputs: {x: a length}}}", Code::formula_symbol, "x is explained");
  refused("formulas: {sinkage: {text: W / (rho Aw)}}", Code::formula_symbol, "not an equation");
  refused("formulas: {sinkage: {text: 's = {steal} W / (rho Aw)'}}", Code::layout_pattern, "steal");
}
