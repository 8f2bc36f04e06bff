#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/robustness/robustness.h"

// The combinations worked by hand: 3.0, 3.5, 4.0 mm, 20, 25, 30 % and doubts of half to twice are common practice, no source.
using namespace strakebook;
using assess::Verdict;
using robustness::InZone;
using sample::length;

namespace {

policy::Policy house() {
  auto house = sample::house();
  house.robustness = {.limits = {length("3.0"), length("3.5"), length("4.0")},
                      .losses = {{20, 100}, {25, 100}, {30, 100}},
                      .doubts = {sample::decimal("0.5"), sample::decimal("1"), sample::decimal("2")},
                      .source = "common practice, no source"};
  return house;
}

InZone tried(const survey::Survey &survey, const policy::Policy &policy = house()) {
  return robustness::robustness(survey, sample::assessed(survey, policy), policy).zones.front();
}

const robustness::Tried &at_limit(const robustness::Grid &grid, const std::string &limit, const std::string &doubt) {
  for (const auto &one : grid.limits)
    if (one.limit == length(limit) && one.doubt.ratio() == sample::decimal(doubt).ratio()) return one.tried;
  throw std::out_of_range(limit);
}

const robustness::Tried &at_loss(const robustness::Grid &grid, int percent, const std::string &original) {
  for (const auto &one : grid.losses)
    if (one.loss == base::Ratio{percent, 100} && one.original == length(original)) return one.tried;
  throw std::out_of_range(original);
}

/// A side of 6 mm under EN 10029:1991 A (5.6 to 7.1), lowest plate 4.6.
sample::SurveyBuilder side() {
  auto made = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.7", "5.6", "4.6", "5.8"});
  made.made.zones.back().original.tolerances = {"EN 10029:1991 A"};
  return made;
}

} // namespace

TEST_CASE("a plate with 4.6 mm left keeps 4.0 whatever the gauge, and a share turns with the original") {
  const auto zone = tried(side().criteria({"absolute-4.0", "percent-20"}).decide("W", "monitor", "absolute-4.0").made);
  REQUIRE(zone.grids.size() == 1);
  const auto &grid = zone.grids.front();
  CHECK(grid.id == "PW 3");
  CHECK(grid.limits.size() == 9);
  CHECK(grid.losses.size() == 9);
  CHECK(at_limit(grid, "4.0", "2").result.margin == length("0.6"));
  CHECK(at_limit(grid, "4.0", "2").result.verdict == Verdict::meets);
  CHECK(at_limit(grid, "4.0", "1").used);
  CHECK_FALSE(at_limit(grid, "4.0", "0.5").used);
  CHECK_FALSE(at_limit(grid, "3.5", "1").used);
  // 20 % of 5.6 leaves 4.48, of 6 leaves 4.8, of 7.1 leaves 5.68; the doubt is 0.1645
  CHECK(at_loss(grid, 20, "5.6").result.margin == length("0.12"));
  CHECK(at_loss(grid, 20, "5.6").result.verdict == Verdict::too_close);
  CHECK(at_loss(grid, 20, "6").result.verdict == Verdict::falls_short);
  CHECK(at_loss(grid, 30, "5.6").result.verdict == Verdict::meets);
  CHECK(zone.verdict == Verdict::meets);
  CHECK_FALSE(zone.flips.limit);
  CHECK_FALSE(zone.flips.original);
  CHECK_FALSE(zone.flips.doubt);
}

TEST_CASE("a verdict that flips inside a range says so, each range alone") {
  // 20 % governs: 4.80 of 6 mm. 4.6 falls short by 0.20, at twice the doubt (0.329) it is too close
  const auto zone = tried(side().criteria({"absolute-4.0", "percent-20"}).decide("W", "monitor", "percent-20").made);
  CHECK(zone.verdict == Verdict::falls_short);
  CHECK(at_loss(zone.grids.front(), 20, "6").used);
  CHECK(zone.flips.limit);    // 25 % leaves 4.50: too close
  CHECK(zone.flips.original); // of 5.6: too close
  CHECK(zone.flips.doubt);
}

TEST_CASE("nothing saves a pit far under every limit, and an absolute limit asks for no original") {
  const auto zone = tried(side().pit("P1", "PW", "3.4", "5.4", "2.7").criteria({"absolute-4.0"}).decide("W", "insert", "absolute-4.0").made);
  REQUIRE(zone.grids.size() == 2);
  for (const auto &one : zone.grids[1].limits) CHECK(one.tried.result.verdict == (one.limit == length("3.0") && one.doubt.ratio() == base::Ratio{2, 1} ? Verdict::too_close : Verdict::falls_short));
  CHECK(zone.verdict == Verdict::falls_short);
  for (const auto &one : zone.moved) CHECK(one.verdict == Verdict::falls_short);
  CHECK_FALSE(zone.flips.limit);
  CHECK_FALSE(zone.flips.doubt);
}

TEST_CASE("a range in which one place turns flips, though the zone's gravest place does not") {
  // the plate, 3.9 of 4.0: too close; of 3.5: met. The pit, 2.7, falls short of both
  const auto zone = tried(side().marks("PW", {"3.9"}).pit("P1", "PW", "3.4", "5.4", "2.7").criteria({"absolute-4.0"}).made);
  for (const auto &one : zone.moved)
    if (one.what == robustness::Moved::What::limit) CHECK(one.verdict == Verdict::falls_short);
  CHECK(zone.flips.limit);
}

TEST_CASE("a limit that the house does not try is tried where the zone is measured by it") {
  auto policy = house();
  policy.robustness.limits = {length("3.0"), length("3.5")};
  policy.robustness.losses = {{30, 100}};
  policy.robustness.doubts.clear();
  const auto absolute = tried(side().criteria({"absolute-4.0"}).made, policy);
  CHECK(absolute.over.limits == std::vector{length("3.0"), length("3.5"), length("4.0")});
  REQUIRE(absolute.over.doubts.size() == 1);
  CHECK(at_limit(absolute.grids.front(), "4.0", "1").used);
  const auto share = tried(side().criteria({"percent-20"}).made, policy);
  CHECK(share.over.losses == std::vector{base::Ratio{20, 100}, base::Ratio{30, 100}});
  CHECK(at_loss(share.grids.front(), 20, "6").used);
  // 1.25 x (1.5 + 0.06 x 18) = 3.225 (Directive 2006/87/EC Annex II Art. 3.02)
  const auto rule = tried(sample::SurveyBuilder().zone("C", "6", "mill certificate", policy::Plating::bilge).row("PC", "C").marks("PC", {"5", "5", "5"}).criteria({"inland-rule"}).made, policy);
  CHECK(rule.over.limits == std::vector{length("3.0"), length("3.225"), length("3.5")});
  CHECK(at_limit(rule.grids.front(), "3.225", "1").used);
}

TEST_CASE("on a weak basis the originals are the sizes alive, and none of them is used") {
  const auto zone = tried(sample::SurveyBuilder().zone("W", "6", "owner's word").row("PW", "W").marks("PW", {"5.7", "5.6", "4.6"}).criteria({"absolute-4.0", "percent-20"}).made);
  // 5.7 is within EN 10029:1991 A of 5 (4.6 to 6.1) and thicker sizes; nothing says that a plate is unwasted
  CHECK(zone.over.originals == std::vector{length("5"), length("6"), length("8"), length("10"), length("12")});
  for (const auto &one : zone.grids.front().losses) CHECK_FALSE(one.tried.used);
  CHECK_FALSE(zone.flips.original);
}

TEST_CASE("a zone that nothing applies to, or in which nothing was usable, has no verdict to move") {
  const auto none = tried(sample::SurveyBuilder().zone("W", "6", "owner's word").row("PW", "W").marks("PW", {"5", "5", "5"}).criteria({"percent-20"}).made);
  CHECK(none.criterion.empty());
  CHECK(none.moved.empty());
  CHECK(none.grids.size() == 1);
  auto unread = sample::SurveyBuilder().zone("W", "6").row("PW", "W").unread("PW", survey::Status::no_echo).criteria({"absolute-4.0"});
  CHECK(tried(unread.made).grids.empty());
}

TEST_CASE("the low side is what is tried") {
  auto made = side().criteria({"absolute-4.0"}).made;
  made.gauges.front().block = sample::mm("5.00");
  made.gauges.front().before = made.gauges.front().after = sample::mm("5.20");
  const auto assessment = sample::assessed(made, house());
  const auto &subject = assessment.zones.front().subjects.front();
  REQUIRE(subject.low);
  const auto zone = tried(made);
  CHECK(at_limit(zone.grids.front(), "4.0", "1").result.margin == subject.judged() - length("4.0"));
}

TEST_CASE("as JSON every combination has limit, doubt, verdict and margin, and a share its original") {
  const auto made = side().criteria({"absolute-4.0"}).made;
  const auto json = robustness::json(robustness::robustness(made, sample::assessed(made, house()), house()));
  const auto &zone = json["zones"][0];
  CHECK(zone["zone"] == "W");
  CHECK(zone["criterion"] == "absolute-4.0");
  CHECK(zone["verdict"] == "meets");
  CHECK(zone["flips"].dump() == R"({"limit":false,"original":false,"doubt":false})");
  CHECK(zone["subjects"][0]["limits"][0].dump() == R"({"limit":"3.0","doubt":"0.5","verdict":"meets","margin":"1.6","used":false})");
  CHECK(zone["subjects"][0]["losses"][0].dump() == R"({"loss":"1/5","original":"5.6","verdict":"too-close","margin":"0.12","used":false})");
}
