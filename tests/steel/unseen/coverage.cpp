#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/unseen/blocks.h"

using namespace strakebook;
using sample::SurveyBuilder;
using survey::Status;

namespace {

unseen::Coverage covered(const survey::Survey &survey) { return sample::unseen_of(survey).zones.at(0).coverage; }

std::string words(const std::optional<unseen::Gap> &gap) {
  if (!gap) return "none";
  return gap->row + ": " + gap->from + " to " + gap->to + ", " + base::mm_exact(gap->length, 0);
}

} // namespace

TEST_CASE("the largest gap lies between neighbouring used marks of one row") {
  SurveyBuilder made;
  made.zone("W", "6").row("PW", "W").row("SW", "W");
  made.marks("PW", {"5.8", "5.8", "5.8"}).unread("PW", Status::no_echo).unread("PW", Status::rejected).marks("PW", {"5.8"});
  made.marks("SW", {"5.8", "5.8"}).on_doubler("SW", "4.0").marks("SW", {"5.8"});
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 3 to PW 6, 3000");
}

TEST_CASE("marks not used at the end of a row leave a gap up to its last planned mark") {
  SurveyBuilder made;
  made.zone("W", "6").row("PW", "W").unread("PW", Status::no_access).unread("PW", Status::no_access).marks("PW", {"5.8", "5.8"});
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 1 to PW 3, 2000");
  made.unread("PW", Status::no_echo).unread("PW", Status::no_echo).unread("PW", Status::no_echo);
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 4 to PW 7, 3000");
}

TEST_CASE("a row without a used mark is one gap; a row of one mark has none; the first of equals is named") {
  SurveyBuilder made;
  made.zone("W", "6").row("PW", "W").row("SW", "W").unread("PW", Status::no_echo);
  CHECK(words(covered(made.made).largest_gap) == "none");
  made.unread("PW", Status::no_echo).unread("PW", Status::no_echo);
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 1 to PW 3, 2000");
  made.marks("SW", {"5.8"}).unread("SW", Status::no_echo).marks("SW", {"5.8"});
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 1 to PW 3, 2000");
}

TEST_CASE("marks are taken by their station, not by the order in which they stand") {
  SurveyBuilder made;
  made.zone("W", "6").row("PW", "W").mark("PW", "7.5", "5.8").mark("PW", "1", "5.8").mark("PW", "4", "5.8");
  CHECK(words(covered(made.made).largest_gap) == "PW: PW 4 to PW 7.5, 3500");
}

// 4 marks of a 13 mm crystal: 4 pi 0.013^2 / 4 = 0.00053093 m2, by hand.
TEST_CASE("the share of the area that was touched, and the marks to the square metre") {
  auto made = SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8/5.7", "5.8", "5.8", "5.8"}).unread("PW", Status::no_echo).made;
  CHECK_FALSE(covered(made).touched_share);
  made.zones[0].area_m2 = sample::decimal("16.2");
  CHECK_FALSE(covered(made).touched_share);
  CHECK(covered(made).used_per_m2 == base::Ratio{20, 81});
  made.gauges[0].crystal = sample::mm("13");
  CHECK(covered(made).touched_share.value() == Approx(0.000530929 / 16.2).epsilon(1e-6));
  CHECK(covered(made).count.planned == 5);
  const auto quantity = unseen::quantities(sample::unseen_of(made)).at(0);
  CHECK(quantity.formula == "touched-share");
  const double n = quantity.inputs[0].value, d = quantity.inputs[1].value, area = quantity.inputs[2].value;
  CHECK(n * 3.14159265358979 * d * d / (4 * area) == Approx(quantity.value).epsilon(1e-9));
}

TEST_CASE("one mark by a gauge of unknown crystal leaves the share open; two crystals are added up") {
  auto made = SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8", "5.8"}).made;
  made.zones[0].area_m2 = sample::decimal("10");
  made.gauges[0].crystal = sample::mm("10");
  made.marks[1].gauge = "depth";
  CHECK_FALSE(covered(made).touched_share);
  made.gauges[1].crystal = sample::mm("20");
  CHECK(covered(made).touched_share.value() == Approx(3.14159265358979 / 4 * (0.0001 + 0.0004) / 10).epsilon(1e-9));
  CHECK_FALSE(covered(made).crystal);
  CHECK(unseen::quantities(sample::unseen_of(made)).empty());
}

TEST_CASE("all zones together: areas add up exactly where every zone gives one, and the largest gap is the largest of all") {
  auto builder = SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8", "5.8"});
  builder.zone("B", "6").row("BC", "B").marks("BC", {"5.8"}).unread("BC", Status::no_echo).marks("BC", {"5.8"});
  auto made = builder.made;
  made.zones[0].area_m2 = sample::decimal("10.25");
  CHECK_FALSE(sample::unseen_of(made).whole.area_m2);
  made.zones[1].area_m2 = sample::decimal("3.5");
  const auto whole = sample::unseen_of(made).whole;
  CHECK(base::to_text(whole.area_m2.value()) == "13.75");
  CHECK(whole.used_per_m2 == base::Ratio{16, 55});
  CHECK(words(whole.largest_gap) == "BC: BC 1 to BC 3, 2000");
  const auto json = unseen::json(sample::unseen_of(made));
  CHECK(json["zones"][0]["area_m2"] == "10.25");
  CHECK(json["zones"][0]["used_per_m2"] == "8/41");
  CHECK(json["zones"][0]["largest_gap"]["length"] == "1000.0");
  CHECK(json["zones"][1]["largest_gap"]["from"] == "BC 1");
  CHECK(json["whole"]["used"] == 4);
}
