#include <catch2/catch.hpp>

#include <cmath>

#include <nlohmann/json.hpp>

#include "steel/unseen/blocks.h"
#include "steel/unseen/port_pirie.h"

using namespace strakebook;
using sample::blocks;
using sample::twelve_depths;
using sample::unseen_of;
using unseen::Refusal;

namespace {

unseen::PitDepths pits(const survey::Survey &survey, const policy::Policy &policy = sample::careful_house()) {
  return unseen_of(survey, policy).zones.at(0).pits.value();
}

Approx near(double figure, double margin) { return Approx(figure).margin(margin).epsilon(0); }

} // namespace

// Coles 2001, section 3.4.1 (see port_pirie.h), through the whole room: 65 blocks of a zone that holds 100, so that the level of
// the whole zone is the return level at 100; bounds with the normal quantiles 1.959964 and 1.644854.
TEST_CASE("Port Pirie as the deepest pits of 65 blocks: what the whole zone comes to") {
  std::vector<std::string> depths;
  for (const double level : sample::port_pirie()) depths.push_back(base::to_text({std::llround(level * 100), 2}));
  const auto found = pits(blocks(depths, "25"));
  CHECK(found.refused == Refusal::none);
  REQUIRE(found.expected);
  const auto &expected = *found.expected;
  CHECK(expected.period == base::Ratio{100, 1});
  CHECK(expected.level == near(4.76596408, 5e-8));
  CHECK(expected.error == near(0.09786682, 5e-8));
  CHECK(expected.low == near(4.76596408 - 1.959964 * 0.09786682, 5e-7));
  CHECK(expected.high == near(4.76596408 + 1.959964 * 0.09786682, 5e-7));
  CHECK(expected.upper == near(4.76596408 + 1.644854 * 0.09786682, 5e-7));
  CHECK(expected.mode == near(3.8694435435 + 0.1948894464 * std::log(100), 1e-8));
  CHECK(expected.chance > 0.5); // A2 0.169 lies under the median of its law
  CHECK_FALSE(expected.poor);
  CHECK(found.deepest_seen == sample::length("4.69"));
  CHECK(expected.beside_mean.value() == near(11.5 - 4.76596408, 5e-8));
}

TEST_CASE("the deepest pit to expect in a whole zone is not the deepest of the blocks") {
  for (const char *area : {"16", "40", "400"}) {
    const auto found = pits(blocks(twelve_depths(), area));
    REQUIRE(found.expected);
    INFO(area);
    CHECK(found.deepest_seen == sample::length("2.0"));
    CHECK(found.expected->level > 2.0);
    CHECK(found.expected->upper > found.expected->level);
    CHECK(found.expected->within > found.expected->level);
  }
}

TEST_CASE("the larger the zone the deeper the pit to expect, and the wider its bounds") {
  const auto small = pits(blocks(twelve_depths(), "10")).expected.value(), large = pits(blocks(twelve_depths(), "100")).expected.value();
  CHECK(large.level > small.level);
  CHECK(large.error > small.error);
  CHECK(large.by_likelihood.law.scale == small.by_likelihood.law.scale);
  // The maximum of N blocks follows the same law moved by beta ln N (Coles 2001, section 3.1.3, max-stability).
  CHECK(large.mode - small.mode == near(large.by_likelihood.law.scale * std::log(10), 1e-12));
}

// Of T independent blocks at least one goes beyond the level that each exceeds with 1/T: 1 - (1 - 1/T)^T, near 1 - 1/e.
TEST_CASE("more zones than not have a pit deeper than the level, and the figure for all but a few says so") {
  const auto found = pits(blocks(twelve_depths(), "40")).expected.value();
  CHECK(found.period == base::Ratio{160, 1});
  CHECK(found.chance_deeper == near(1 - std::pow(1 - 1.0 / 160, 160), 1e-12));
  const auto &law = found.by_likelihood.law;
  CHECK(160 * unseen::log_below(law, found.within) == near(std::log(0.95), 1e-9));
}

TEST_CASE("why no depth is given, one by one") {
  auto depths = twelve_depths();
  CHECK(pits(blocks(depths, "40")).refused == Refusal::none);
  CHECK(pits(blocks(depths, "")).refused == Refusal::no_area);
  CHECK(pits(blocks(depths, "3.01")).refused == Refusal::none);
  CHECK(pits(blocks(depths, "3")).refused == Refusal::all_seen); // 12 blocks of 0.25
  CHECK(pits(blocks(depths, "0.2")).refused == Refusal::all_seen);
  depths[3] = "0";
  const auto bare = pits(blocks(depths, "40"));
  CHECK(bare.refused == Refusal::blocks_without_pits);
  CHECK(bare.without_pits == 1);
  CHECK(pits(blocks(std::vector<std::string>(12, "1.3"), "40")).refused == Refusal::all_alike);
  depths.resize(10);
  depths[3] = "1.1";
  CHECK(pits(blocks(depths, "40")).refused == Refusal::none);
  depths.resize(9);
  const auto few = pits(blocks(depths, "40"));
  CHECK(few.refused == Refusal::few_blocks);
  CHECK_FALSE(few.expected);
  CHECK(few.deepest_seen == sample::length("1.9"));
}

TEST_CASE("a poor fit is said, and its figure stays") {
  std::vector<std::string> two_kinds(12, "0.3");
  for (std::size_t i = 6; i < two_kinds.size(); ++i) two_kinds[i] = "3.0";
  two_kinds[0] = "0.4";
  const auto found = pits(blocks(two_kinds, "40"));
  REQUIRE(found.expected);
  CHECK(found.expected->poor);
  CHECK(found.expected->chance < 0.05);
  CHECK_FALSE(pits(blocks(twelve_depths(), "40")).expected->poor);
  auto strict = sample::careful_house();
  strict.unseen.significance = {99, 100};
  CHECK(pits(blocks(twelve_depths(), "40"), strict).expected->poor);
}

TEST_CASE("a listed pit deeper than any in the blocks is named; a zone without a reading has no plate to set the depth beside") {
  auto survey = blocks(twelve_depths(), "40");
  survey.pits.push_back({.id = "P1", .at = {.row = "BC", .station = sample::station("2.5")}, .adjacent = sample::mm("11.5"), .depth = sample::mm("2.0")});
  CHECK(pits(survey).deeper_pit.empty());
  survey.pits.push_back({.id = "P2", .at = {.row = "BC", .station = sample::station("2.7")}, .adjacent = sample::mm("11.5"), .depth = sample::mm("2.1")});
  CHECK(pits(survey).deeper_pit == "P2");
  survey.marks.clear();
  CHECK_FALSE(pits(survey).expected->beside_mean);
}

TEST_CASE("as JSON: what was fitted, or why nothing was") {
  const auto json = unseen::json(unseen_of(blocks(twelve_depths(), "40")));
  const auto &pits = json["zones"][0]["pits"];
  CHECK(pits["blocks"] == 12);
  CHECK(pits["block_m2"] == "0.25");
  CHECK(pits["deepest_seen"] == "2.0");
  CHECK(pits["refused"].is_null());
  CHECK(pits["period"] == "160/1");
  for (const char *key : {"mu", "beta", "se_mu", "se_beta", "cov", "nll"}) CHECK(pits["ml"][key].is_number());
  for (const char *key : {"level", "se", "low", "high", "upper", "mode", "beside_mean"}) CHECK(pits[key].is_number());
  CHECK(pits["fit"]["poor"] == false);
  const auto refused = unseen::json(unseen_of(blocks({"0.5", "0.4"}, "40")))["zones"][0]["pits"];
  CHECK(refused["refused"] == "few-blocks");
  for (const char *key : {"ml", "lmoments", "fit", "period", "level", "se", "low", "high", "upper", "mode", "beside_mean"}) {
    REQUIRE(refused.contains(key));
    CHECK(refused[key].is_null());
  }
  auto none = blocks({"0.5"}, "40");
  none.zones[0].pit_blocks.reset();
  CHECK((unseen::json(unseen_of(none)))["zones"][0]["pits"].is_null());
}

TEST_CASE("the depth and its return period are quantities with their formula and inputs") {
  const auto all = unseen::quantities(unseen_of(blocks(twelve_depths(), "40")));
  REQUIRE(all.size() == 2);
  CHECK(all[0].formula == "return-period");
  CHECK(all[0].inputs[0].value / all[0].inputs[1].value == near(all[0].value, 1e-12));
  CHECK(all[1].formula == "return-level");
  const double mu = all[1].inputs[0].value, beta = all[1].inputs[1].value, period = all[1].inputs[2].value;
  CHECK(mu - beta * std::log(-std::log(1 - 1 / period)) == near(all[1].value, 1e-12));
}
