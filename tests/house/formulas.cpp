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
  CHECK(sinkage.inputs.at("Aw") == "area of the waterplane in m²");
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
}

TEST_CASE("nothing but the weight of steel fills a place holder of a formula") {
  refused("formulas: {sinkage: {text: 's = {steel} W / (rho Aw)'}}", Code::layout_pattern, "nothing fills {steel}");
  const test::Layouts layouts;
  layouts.change("base/formulas.yaml", "s = W / (rho Aw)", "s = {steal} W / (rho Aw)");
  Diagnostics sink;
  CHECK_FALSE(layouts.read("base", sink));
  test::check_only(sink, Code::layout_pattern, "steal");
}

TEST_CASE("a layout adds values to try, and takes none away") {
  Diagnostics sink;
  const auto house = read("policy: {robustness: {source: ours, limits: [3.2 mm, 4.5 mm, 4 mm], doubts: ['1.5']}}", sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  const auto mm = [](int hundredths) { return base::Length::micrometres(10 * hundredths); };
  CHECK(house->policy.robustness.limits == std::vector{mm(300), mm(320), mm(350), mm(400), mm(450)});
  CHECK(house->policy.robustness.losses == std::vector<base::Ratio>{{20, 100}, {25, 100}, {30, 100}});
  CHECK(house->policy.robustness.doubts == std::vector<base::Decimal>{{5, 1}, {1, 0}, {15, 1}, {2, 0}});
  refused("policy: {robustness: {limits: [3.2 mm]}}", Code::missing_key, "source");
}

TEST_CASE("the doubt as it is must be among those tried") {
  const test::Layouts layouts;
  layouts.change("base/outlook.yaml", "['0.5', '1', '2']", "['0.5', '2']");
  Diagnostics sink;
  CHECK_FALSE(layouts.read("base", sink));
  test::check_only(sink, Code::out_of_range, "1 among them");
}
