#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/ladder.h"

// Thresholds of the ladder: common practice, no source.
using namespace strakebook;
using assess::Extent;
using sample::length;
using Ids = std::vector<std::string>;

namespace {

std::string rung(const std::string &remaining, const std::string &original) {
  const auto ladder = sample::ladder();
  return ladder.rungs.at(assess::rung_of(ladder, length(remaining), length(original)).value()).id;
}

/// What is suggested where `low` of twenty marks stand at 4.5 of 6 mm and the others at 5.8.
assess::Suggestion suggested(int low, bool under_pit, Extent pitting) {
  std::vector<assess::Length> figures(20, length("5.8"));
  std::fill_n(figures.begin(), low, length("4.5"));
  return assess::suggest(sample::house(), {length("4.5"), under_pit, pitting}, length("6"), figures);
}

} // namespace

TEST_CASE("ladder: both sides of every rung") {
  CHECK(rung("2.499999", "6") == "unsafe");
  CHECK(rung("2.5", "6") == "thin");
  CHECK(rung("2.999999", "6") == "thin");
  CHECK(rung("3.0", "6") == "low");
  CHECK(rung("3.999999", "6") == "low");
  CHECK(rung("4.0", "6") == "reduced");
  CHECK(rung("4.799999", "6") == "reduced");
  CHECK(rung("4.8", "6") == "sound");
  CHECK(rung("3.2", "4") == "sound"); // thin plate: 0.8 of 4 is 3.2
  CHECK(rung("3.199999", "4") == "low");
}

TEST_CASE("suggestion: how much of the zone stands on the rung decides between isolated and extensive") {
  CHECK_FALSE(suggested(0, true, Extent::isolated).extensive);
  CHECK(suggested(0, true, Extent::isolated).actions == Ids{"clean and recoat", "monitor"});
  CHECK(suggested(0, true, Extent::extensive).actions == Ids{"monitor"});
  CHECK(suggested(0, true, Extent::scattered).actions == Ids{"monitor"}); // anything but isolated
  CHECK(suggested(0, true, Extent::not_declared).extensive); // silence is not "isolated"
  CHECK(suggested(1, false, Extent::none).extensive);        // 1 of 20 is five per cent, not under it
  CHECK(*suggested(1, false, Extent::none).share_at_rung == base::Ratio{1, 20});
  CHECK(suggested(1, true, Extent::isolated).extensive);
}

TEST_CASE("suggestion: one low mark among many is isolated") {
  std::vector<assess::Length> figures(21, length("5.8"));
  figures[3] = length("4.5");
  CHECK_FALSE(assess::suggest(sample::house(), {length("4.5"), false, Extent::none}, length("6"), figures).extensive);
}

TEST_CASE("a decision departs when its action is not suggested") {
  const auto departs = [](const char *action) {
    return sample::assessed(sample::thick_bottom().decide("B", action).made).zones[0].departs;
  };
  CHECK_FALSE(departs("clean and recoat"));
  CHECK(departs("insert"));
  CHECK_FALSE(sample::assessed(sample::thick_bottom().made).zones[0].departs);
}
