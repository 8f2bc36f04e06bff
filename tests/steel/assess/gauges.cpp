#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/low_side.h"

using namespace strakebook;
using assess::BlockCheck;
using assess::Length;
using assess::Verdict;
using sample::decimal;
using sample::length;
using sample::mm;
using sample::words;

namespace {

/// A gauge whose certificate is five months over, not checked before the readings, and 5.20 on 5.00 after them.
survey::Survey lapsed() {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.1", "4.4", "4.6", "5.2"})
                    .criteria({"absolute-4.0"}).made;
  survey.report.inspected = base::Located<base::Date>{{2026, 10, 14}, {}};
  survey.gauges[0].certificate_until = base::Located<base::Date>{{2026, 5, 14}, {}};
  survey.gauges[0].block = mm("5.00");
  survey.gauges[0].after = mm("5.20");
  return survey;
}

survey::Survey sound() {
  auto survey = lapsed();
  survey.gauges[0].certificate_until->value.year = 2027;
  survey.gauges[0].before = survey.gauges[0].after = mm("5.00");
  return survey;
}

std::vector<std::string> places(const assess::Assessment &result) {
  std::vector<std::string> out;
  for (const auto &one : result.retakes) out.push_back(one.place);
  return out;
}

} // namespace

TEST_CASE("block checks, drift and certificate are judged once") {
  auto survey = sound();
  auto gauge = sample::assessed(survey).gauges[0];
  CHECK_FALSE(gauge.indicative);
  CHECK(gauge.corrections.empty());
  survey.gauges[0].before = mm("4.96");
  survey.gauges[0].after = mm("5.02");
  gauge = sample::assessed(survey).gauges[0];
  CHECK(gauge.before.off == length("-0.04"));
  CHECK(gauge.drift == length("0.06"));
  CHECK(gauge.after.state == BlockCheck::State::agrees);
  CHECK_FALSE(gauge.indicative);
  survey.gauges[0].certificate_until->value = survey.report.inspected->value; // holds to the end of that day
  CHECK_FALSE(sample::assessed(survey).gauges[0].lapsed);
  survey.gauges[0].certificate_until->value.day -= 1;
  CHECK(sample::assessed(survey).gauges[0].indicative);
}

// Computed: 4.1 x 5.00 / 5.20 = 3.9423..., 4.1 - (5.20 - 5.00) = 3.90.
TEST_CASE("a lapsed certificate and a block read high: raw kept, low side judged, near marks to be retaken") {
  const auto survey = lapsed();
  const auto result = sample::assessed(survey);
  const auto &gauge = result.gauges[0];
  CHECK(gauge.lapsed);
  CHECK(gauge.before.state == BlockCheck::State::missing);
  CHECK(gauge.after.state == BlockCheck::State::differs);
  CHECK_FALSE(gauge.drift);
  CHECK(gauge.indicative);
  REQUIRE(gauge.corrections.size() == 1);
  CHECK(assess::velocity_type(length("4.1"), gauge.corrections[0]) == length("3.942307"));
  CHECK(assess::zero_type(length("4.1"), gauge.corrections[0]) == length("3.90"));
  CHECK(result.marks[0].remaining == length("4.1"));
  CHECK(result.marks[0].low == length("3.90"));
  CHECK(result.marks[0].loss == length("2.1"));
  CHECK(result.marks[0].indicative);
  CHECK(result.marks[3].low == length("5.0")); // velocity-type, 5.0, and zero-type meet at the block
  const auto &zone = result.zones[0];
  CHECK(zone.min == length("4.1"));
  CHECK(zone.indicative);
  CHECK(zone.rung == "low"); // 3.90 is under 4.0
  CHECK(zone.subjects[0].results[0].margin == length("-0.10"));
  CHECK(zone.subjects[0].results[0].bare == assess::Bare::over);
  CHECK(result.worst == "PW 1");
  CHECK(result.worst_remaining == length("3.90"));
  CHECK(places(result) == std::vector<std::string>{"PW 1", "PW 2"}); // 4.2 on the low side is within 0.3 of 4.0, 4.4 is not
  CHECK(result.retakes[0].off == Length{});                          // the limit lies between 3.90 and 4.1
  CHECK(result.retakes[1].off == length("0.2"));
}

TEST_CASE("retakes: three tenths off a limit is near, a nanometre more is not") {
  auto survey = sound();
  survey.gauges[0].before.reset(); // indicative, and nothing to correct by
  survey.marks[0].repeats[0] = mm("4.3");
  survey.marks[1].repeats[0] = mm("3.7");
  survey.marks[2].repeats[0] = mm("4.300001");
  survey.marks[3].repeats[0] = mm("3.699999");
  CHECK(places(sample::assessed(survey)) == std::vector<std::string>{"PW 1", "PW 2"});
  CHECK_FALSE(sample::assessed(survey).marks[0].low);
}

TEST_CASE("an estimate that makes a thickness larger never counts, and a sound gauge is judged as displayed") {
  auto survey = sound();
  CHECK_FALSE(sample::assessed(survey).marks[0].low);
  survey.gauges[0].before = mm("4.70"); // reads low: every estimate is larger
  CHECK(sample::assessed(survey).gauges[0].indicative);
  CHECK_FALSE(sample::assessed(survey).marks[0].low);
  survey.gauges[0].after = mm("5.04"); // agrees, but a gauge that differs once is taken at its worst
  CHECK(sample::assessed(survey).marks[0].low == length("4.06"));
}

TEST_CASE("a worst place is that of the low side, not of the least displayed") {
  auto survey = lapsed();
  survey.gauges.push_back({.id = "sound", .block = mm("5"), .before = mm("5"), .after = mm("5"), .u = length("0.1")});
  survey.marks[1].gauge = "sound";
  survey.marks[1].repeats[0] = mm("4.0");
  const auto zone = sample::assessed(survey).zones[0];
  CHECK(zone.least == "PW 2");
  CHECK(zone.worst == "PW 1");
}

TEST_CASE("under a pit the plate beside it is taken low and the depth high") {
  auto survey = lapsed();
  survey.pits = sample::SurveyBuilder().pit("P1", "PW", "1.2", "5.0", "1.0").made.pits;
  CHECK(sample::assessed(survey).pits[0].low == length("3.8")); // 5.0 - 0.2, less 1.0
  survey.gauges[1].block = mm("2.00");
  survey.gauges[1].before = survey.gauges[1].after = mm("1.60"); // a step of 2.00 read as 1.60
  const auto pit = sample::assessed(survey).pits[0];
  CHECK(pit.remaining == length("4.0"));
  CHECK(pit.low == length("3.4")); // depth 1.0 + 0.40 by the zero, 1.25 by the scale
  CHECK(pit.indicative);
}

// t = v dt / 2 (ASTM E797): 5920 m/s and 6.76 us are 20.0096 mm; 6.00 at 5920 where 5850 is true is 5.92905 (computed).
TEST_CASE("a velocity known to be wrong scales a figure, and the lesser of the two is judged") {
  auto survey = sound();
  survey.gauges[0].velocity = words("5920 m/s");
  survey.gauges[0].true_velocity = decimal("5850");
  survey.marks[0].repeats[0] = mm("6.00");
  auto result = sample::assessed(survey);
  REQUIRE(result.gauges[0].corrections.size() == 1);
  const auto &correction = result.gauges[0].corrections[0];
  CHECK(result.marks[0].low == length("5.929054"));
  CHECK_FALSE(assess::zero_type(length("6.00"), correction));
  constexpr std::int64_t hundredths_of_us = 676; // v dt / 2 with v in m/s and dt in 10 ns is v dt / 200 in um
  CHECK(length("20.0096") == Length::nanometres(5920 * hundredths_of_us * 5));
  CHECK(assess::velocity_type(length("20.0096"), correction) == Length::nanometres(5850 * hundredths_of_us * 5));
  CHECK_FALSE(result.gauges[0].indicative);
  survey.gauges[0].true_velocity = decimal("5990"); // would make it thicker
  CHECK_FALSE(sample::assessed(survey).marks[0].low);
}

// Common practice, no source: a single echo counts a coating as 2 to 2.5 times its film of steel.
TEST_CASE("a single echo through a known film is judged by what it may read too much; through an unknown one it is indicative") {
  auto survey = sound();
  for (auto &mark : survey.marks) mark.surface = survey::Surface::coated_single_echo;
  survey.marks[0].coating = mm("300 um");
  const auto result = sample::assessed(survey);
  REQUIRE(result.marks[0].over_read);
  CHECK(result.marks[0].over_read->least == length("0.6"));
  CHECK(result.marks[0].over_read->most == length("0.75"));
  CHECK(result.marks[0].low == length("3.35"));
  CHECK_FALSE(result.marks[0].indicative);
  CHECK(result.marks[1].indicative);
  CHECK_FALSE(result.marks[1].low);
  CHECK_FALSE(result.marks[1].over_read);
  survey.marks[0].surface = survey::Surface::coated_echo_to_echo; // the film does not matter to it
  CHECK_FALSE(sample::assessed(survey).marks[0].low);
}

TEST_CASE("the mean of repeats is exact and rounded down to a nanometre; marks with repeats apart are counted") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.6/4.6/4.7", "4.6/4.9", "4.6/4.900001"}).made;
  auto result = sample::assessed(survey);
  CHECK(result.marks[0].remaining == length("4.6"));
  CHECK(result.repeats_apart == 1);
  for (auto &mark : survey.marks) mark.reduce = survey::Reduction::mean_of_repeats;
  result = sample::assessed(survey);
  CHECK(result.marks[0].remaining == length("4.633333"));
  CHECK(result.marks[2].remaining == length("4.75")); // 4.7500005
  CHECK(result.repeats_apart == 1);
}

TEST_CASE("what is computed of a gauge stands in the JSON") {
  const auto survey = lapsed();
  const auto json = assess::json(survey, sample::assessed(survey));
  const auto &gauge = json.at("gauges").at(0);
  CHECK(gauge.at("indicative") == true);
  CHECK(gauge.at("before").at("state") == "missing");
  CHECK(gauge.at("after").at("off") == "0.2");
  CHECK(gauge.at("corrections").at(0).at("velocity_type") == "3.942307");
  CHECK(gauge.at("corrections").at(0).at("zero_type") == "3.9");
  CHECK(json.at("marks").at(0).at("remaining") == "4.1");
  CHECK(json.at("marks").at(0).at("low_side") == "3.9");
  CHECK(json.at("retakes").at(0).at("place") == "PW 1");
  CHECK(json.at("worst_remaining") == "3.9");
}

TEST_CASE("a pit in a doubler is judged by nothing, by an indicative gauge too") {
  sample::SurveyBuilder builder;
  builder.zone("W", "6").row("PW", "W").marks("PW", {"5.0", "5.1"}).criteria({"absolute-4.0"});
  auto survey = builder.made;
  for (auto &mark : survey.marks) mark.plate = survey::Plate::doubler;
  survey.doublers.push_back({.id = "D1", .over = {.rows = {"PW"}, .zone = {}, .from = {}, .to = {}}});
  survey.pits.push_back({.id = "P1", .at = {.row = "PW", .station = sample::station("1")}, .adjacent = sample::mm("5.0"), .depth = sample::mm("2.0")});
  survey.gauges = {{.id = "ut", .block = sample::mm("5.0"), .after = sample::mm("5.2"), .u = sample::length("0.1")}};
  for (auto &mark : survey.marks) mark.gauge = "ut";
  const auto result = sample::assessed(survey); // no place of the zone is judged at all
  CHECK(result.gauges[0].indicative);
  CHECK(result.retakes.empty());
  CHECK_FALSE(result.pits[0].share);
  CHECK_FALSE(result.pits[0].low);
  CHECK(result.zones[0].too_few);

  survey.pits[0].face.text = "inside"; // the hull's own plate, whatever lies outside it
  const auto inside = sample::assessed(survey);
  CHECK(inside.pits[0].doubler.empty());
  CHECK(inside.zones[0].worst_pit == "P1");
}
