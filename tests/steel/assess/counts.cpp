#include <catch2/catch.hpp>

#include <algorithm>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"

using namespace strakebook;
using base::Ratio;
using sample::length;
using survey::Status;

namespace {

sample::SurveyBuilder mixed() {
  sample::SurveyBuilder builder;
  builder.zone("W", "6").row("PW", "W").row("SW", "W")
      .marks("PW", {"5.8", "5.7/5.5/5.6", "5.5"})
      .unread("PW", Status::no_echo)
      .unread("PW", Status::not_cleaned)
      .unread("PW", Status::no_echo)
      .unread("PW", Status::rejected)
      .on_doubler("PW", "3.9")
      .marks("SW", {"5.9"})
      .criteria({"percent-20", "absolute-4.0"});
  return builder;
}

} // namespace

TEST_CASE("counts add up, and say what was left out") {
  const auto result = sample::assessed(mixed().made);
  const auto &row = result.rows.at(0);
  CHECK(row.count.planned == 8);
  CHECK(row.count.read == 4);
  CHECK(row.count.used == 3);
  CHECK(row.count.doubler == 1);
  CHECK(row.count.rejected == 1);
  CHECK(row.count.not_read == std::map<Status, int>{{Status::no_echo, 2}, {Status::not_cleaned, 1}});
  CHECK(result.marks[3].left_out == "no-echo");
  CHECK(result.marks[7].left_out == "doubler");
  CHECK_FALSE(result.marks[7].used);
  for (const auto *count : {&row.count, &result.zones[0].count, &result.coverage}) {
    int not_read = 0;
    for (const auto &[status, n] : count->not_read) not_read += n;
    CHECK(count->planned == count->read + count->rejected + not_read);
    CHECK(count->read == count->used + count->doubler);
  }
}

TEST_CASE("the least of the repeats counts; least, greatest and mean are exact; the first of equals is the worst") {
  const auto result = sample::assessed(mixed().made);
  const auto &row = result.rows.at(0);
  CHECK(result.marks[1].remaining == length("5.5"));
  CHECK(row.min == length("5.5"));
  CHECK(row.max == length("5.8"));
  CHECK(row.worst == "PW 2");
  CHECK(row.worst_loss == length("0.5"));
  CHECK(result.marks[1].lowest_of_row);
  CHECK_FALSE(result.marks[2].lowest_of_row);
  CHECK(*row.mean_nm == Ratio{16'800'000, 3});
  CHECK(*result.zones[0].mean_nm == Ratio{22'700'000, 4});
}

TEST_CASE("a zone that nothing usable was read in has no figures and no suggestion") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").unread("PW", Status::no_access).on_doubler("PW", "4.0");
  const auto result = sample::assessed(survey.made);
  const auto &zone = result.zones.at(0);
  CHECK(zone.subjects.empty());
  CHECK_FALSE(zone.min);
  CHECK_FALSE(zone.mean_nm);
  CHECK(zone.worst.empty());
  CHECK(zone.too_few);
  CHECK(zone.rung.empty());
  CHECK(zone.suggested.empty());
  CHECK(result.worst.empty());
}

TEST_CASE("too few: under the least number of marks, or under the least share of those planned") {
  const auto too_few = [](int read, int planned) {
    auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W");
    for (int i = 0; i < planned; ++i) i < read ? survey.marks("PW", {"5.8"}) : survey.unread("PW", Status::no_echo);
    return sample::assessed(survey.made).zones[0].too_few;
  };
  CHECK(too_few(2, 2));
  CHECK_FALSE(too_few(3, 3));
  CHECK_FALSE(too_few(3, 6));
  CHECK(too_few(3, 7));
}

TEST_CASE("marks to the square metre, and the spot check below one") {
  auto survey = mixed();
  CHECK_FALSE(sample::assessed(survey.made).marks_per_m2);
  survey.made.zones[0].area_m2 = sample::decimal("5.0");
  CHECK(*sample::assessed(survey.made).marks_per_m2 == Ratio{1, 1});
  CHECK_FALSE(sample::assessed(survey.made).spot_check);
  survey.made.zones[0].area_m2 = sample::decimal("5.1");
  CHECK(*sample::assessed(survey.made).marks_per_m2 == Ratio{50, 51});
  CHECK(sample::assessed(survey.made).spot_check);
}

TEST_CASE("a figure held for query is not read: it is in no minimum, no mean and no verdict") {
  auto survey = mixed();
  survey.mark("PW", "9", "7.9375/0.1");
  survey.made.marks.back().status = Status::queried;
  const auto result = sample::assessed(survey.made);
  CHECK(result.coverage.not_read.at(Status::queried) == 1);
  CHECK(result.coverage.planned == 10);
  CHECK(result.coverage.read == 5);
  CHECK(result.marks.back().left_out == "queried");
  CHECK(result.zones[0].min == length("5.5"));
  CHECK(result.zones[0].max == length("5.9"));
  const auto json = assess::json(survey.made, result);
  CHECK(json["marks"].back()["displayed"][0] == "7.9375 mm");
  CHECK(json["marks"].back()["displayed_mm"][0] == "7.9375");
}

TEST_CASE("a pit on a doubler is in the outer plate: it is the worst of nothing") {
  auto survey = mixed();
  survey.pit("P1", "PW", "8", "3.9", "2.0").pit("P2", "PW", "1", "5.8", "0.5");
  const auto with_hull = sample::assessed(survey.made);
  CHECK(with_hull.worst == "P1");
  survey.made.doublers = {{.id = "D1", .over = {.rows = {"PW"}, .from = sample::station("7"), .to = sample::station("9")},
                           .outer = sample::mm("4.0")}};
  survey.made.doublers[0].from_inside =
      survey::InnerReading{.reading = sample::mm("3.4"), .at = {.row = "PW", .station = sample::station("8")}, .gauge = "ut"};
  const auto result = sample::assessed(survey.made);
  CHECK(result.pits[0].doubler == "D1");
  CHECK_FALSE(result.pits[0].share);
  CHECK_FALSE(result.pits[0].standing);
  CHECK(result.pits[1].doubler.empty());
  CHECK(result.zones[0].worst_pit == "P2");
  CHECK(result.worst == "P2");
  const auto json = assess::json(survey.made, result);
  CHECK(json["pits"][0]["doubler"] == "D1");
  CHECK(json["pits"][0]["loss"].is_null());
  CHECK(json["doublers"][0]["outer"] == "4.0");
  CHECK(json["doublers"][0]["from_inside"]["reading"] == "3.4"); // alone: nothing here is 7.4
}

TEST_CASE("the area that was read is that of the zones with a mark that is used") {
  auto survey = mixed();
  survey.zone("B", "10").row("BC", "B").unread("BC", Status::no_access);
  survey.made.zones[0].area_m2 = sample::decimal("16.2");
  CHECK_FALSE(sample::assessed(survey.made).shell_m2);
  survey.made.zones[1].area_m2 = sample::decimal("57.2");
  CHECK(*sample::assessed(survey.made).read_m2 == Ratio{81, 5});
  CHECK(*sample::assessed(survey.made).shell_m2 == Ratio{367, 5}); // 73.4
}

TEST_CASE("the order of rows does not matter") {
  auto survey = mixed();
  survey.marks("SW", {"4.4", "4.6"}).pit("P1", "SW", "1.5", "5.9", "0.7").pit("P2", "PW", "2.5", "5.5", "1.1");
  auto turned = survey;
  std::ranges::reverse(turned.made.rows);
  std::ranges::stable_partition(turned.made.marks, [](const survey::Mark &mark) { return mark.row == "SW"; });
  const auto a = sample::assessed(survey.made), b = sample::assessed(turned.made);
  CHECK((assess::json(survey.made, a))["zones"] == (assess::json(turned.made, b))["zones"]);
  CHECK(a.rows[0].worst == b.rows[1].worst);
  CHECK(a.worst == b.worst);
}

TEST_CASE("criteria stand in the house's order, the survey's own after them") {
  auto survey = mixed();
  survey.made.criteria = {{.id = "letter"}, {.id = "percent-20"}, {.id = "absolute-4.0", .asked_by = sample::words("the underwriter")}};
  survey.made.own_criteria = {sample::absolute("3.7")};
  survey.made.own_criteria[0].id = "letter";
  const auto result = sample::assessed(survey.made);
  REQUIRE(result.criteria.size() == 3);
  CHECK(result.criteria[0].id == "absolute-4.0");
  CHECK(result.criteria[0].asked_by == "the underwriter");
  CHECK(result.criteria[1].id == "percent-20");
  CHECK(result.criteria[2].id == "letter");
  CHECK(result.zones[0].subjects[0].results[2].limit == length("3.7"));
}

TEST_CASE("as JSON: lengths are decimal strings of mm, shares are fractions in lowest terms") {
  auto survey = sample::thick_bottom();
  const auto text = assess::json(survey.made, sample::assessed(survey.made)).dump();
  CHECK(text == assess::json(survey.made, sample::assessed(survey.made)).dump());
  const auto json = nlohmann::json::parse(text);
  CHECK(json["worst"] == "P2");
  CHECK(json["worst_remaining"] == "7.9");
  CHECK(json["pits"][1]["share"]["nominal"] == "41/120");
  CHECK(json["zones"][0]["mean"] == "459/40"); // 11.475 mm
  CHECK(json["zones"][0]["subjects"][1]["results"][4]["criterion"] == "percent-30");
  CHECK(json["zones"][0]["subjects"][1]["results"][4]["margin"] == "-0.5");
  CHECK(json["zones"][0]["extent"] == "isolated");
  CHECK(json["zones"][0]["under_pit"]["share"]["nominal"] == "41/120");
  CHECK(json["zones"][0]["local"]["at"] == "BC 1");
  CHECK(json["zones"][0]["general"]["remaining"] == "459/40");
  CHECK(json["zones"][0]["pitting"]["per_m2"] == "1/5");
  CHECK(json["zones"][0]["pitting"]["spacing"] == "1000.0");
  CHECK(json["zones"][0]["pitting"]["factor"] == "164/21"); // 4.1 over 12 less 11.475
  CHECK(json["coverage"]["planned"] == 4);
}
