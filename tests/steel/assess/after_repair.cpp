#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "strakebook/steel/assess/after_repair.h"
#include "support/survey_builder.h"

using namespace strakebook;
using assess::Verdict;
using sample::station;

namespace {

/// A side of 6 mm under 4.0 mm, with one item on it and an addendum that gives these readings at PW 2.
survey::Survey repaired(const std::vector<std::string> &figures, const std::string &action = "insert") {
  auto made = sample::SurveyBuilder().zone("W", "6.0").row("PW", "W").marks("PW", {"5.8", "3.2", "5.7"})
                  .criteria({"absolute-4.0", "percent-25"}).decide("W", action, "absolute-4.0").made;
  made.recommendations = {{.id = "1", .action = action, .at = {.rows = {"PW"}, .from = station("1.5"), .to = station("2.5"), .span = {.line = 1}}}};
  survey::ClosedItem item{.item = "1", .outcome = survey::Closing::closed};
  for (const auto &figure : figures)
    item.readings.push_back({.at = {.row = "PW", .station = station("2")}, .reading = sample::mm(figure)});
  made.addenda = {{.id = "1", .inspected = base::Located<base::Date>{{2026, 11, 28}}, .gauge = "ut", .closes = {item}}};
  return made;
}

std::vector<assess::NewResult> results(const survey::Survey &survey) {
  const auto policy = sample::house();
  base::Diagnostics sink;
  const auto assessment = assess::assess(survey, policy, sink);
  REQUIRE(sink.ok());
  return assess::after_repair(survey, policy, assessment, survey.addenda[0], survey.addenda[0].closes[0]);
}

Verdict verdict_of(const std::string &figure) { return results(repaired({figure})).at(0).standing.value().result.verdict; }

} // namespace

// JCGM 106:2012, 8.3.2: acceptance at the limit plus w; w = 1.645 u = 0.1645 for u = 0.1 (factor: common practice, no source).
TEST_CASE("a reading after repair is judged exactly at the limit with its doubt") {
  CHECK(verdict_of("4.1645") == Verdict::meets);
  CHECK(verdict_of("4.164499") == Verdict::too_close);
  CHECK(verdict_of("3.835501") == Verdict::too_close);
  CHECK(verdict_of("3.8355") == Verdict::falls_short);
}

TEST_CASE("it is held to the criterion that governs its zone, and to the one its marks are measured by where none does") {
  auto survey = repaired({"6.0"});
  CHECK(results(survey).at(0).standing->result.criterion == "absolute-4.0");
  CHECK(results(survey).at(0).standing->result.margin == sample::length("2.0"));
  survey.decisions[0].criterion = "percent-25";
  CHECK(results(survey).at(0).standing->result.limit == sample::length("4.5"));
  survey.decisions[0].criterion.clear(); // 4.5 leaves the lesser margin
  CHECK(results(survey).at(0).standing->result.criterion == "percent-25");
}

TEST_CASE("a zone that no criterion applies to judges nothing") {
  auto survey = repaired({"6.0"});
  survey.criteria.clear();
  CHECK_FALSE(results(survey).at(0).standing);
}

TEST_CASE("on a plate laid over the hull's a reading is judged by nothing") {
  CHECK(results(repaired({"6.0"}, "overplate")).at(0).on_doubler);
  CHECK_FALSE(results(repaired({"6.0"}, "overplate")).at(0).standing);
  auto survey = repaired({"6.0"}, "overplate");
  survey.addenda[0].closes[0].readings[0].at.station = station("3"); // beside it
  CHECK(results(survey).at(0).standing);
  survey.steelwork = {{.id = "S1", .recommendation = "1", .action = "overplate",
                       .at = {.rows = {"PW"}, .from = station("2.8"), .to = station("3.2"), .span = {.line = 1}}}};
  CHECK_FALSE(results(survey).at(0).standing);
}

TEST_CASE("an insert takes a doubler's place; beside the work the doubler is still there") {
  auto survey = repaired({"6.0"});
  survey.doublers = {{.id = "D1", .over = {.rows = {"PW"}, .from = station("1"), .to = station("3"), .span = {.line = 1}}}};
  CHECK(results(survey).at(0).standing);
  survey.addenda[0].closes[0].readings[0].at.station = station("3");
  CHECK(results(survey).at(0).on_doubler);
}

TEST_CASE("the certificate has to hold on the day of the addendum") {
  auto survey = repaired({"6.0"});
  survey.report.inspected = base::Located<base::Date>{{2026, 10, 14}};
  survey.gauges[0].certificate_until = base::Located<base::Date>{{2026, 11, 27}};
  CHECK(results(survey).at(0).lapsed);
  survey.gauges[0].certificate_until->value.day = 28;
  CHECK_FALSE(results(survey).at(0).lapsed);
}

TEST_CASE("a doubt that is a share of the thickness counts the thickest reading, of the addendum too") {
  auto survey = repaired({"5.8"});
  survey.gauges[0].u.reset();
  survey.gauges[0].doubt = {{.id = "velocity", .share = sample::decimal("2")}};
  const auto before = results(survey).at(0).standing->band_nm;
  survey.addenda[0].closes[0].readings[0].reading = sample::mm("11.6");
  CHECK(results(survey).at(0).standing->band_nm == before * 2);
}

TEST_CASE("the JSON of addenda gives each reading with its verdict, and what stays open") {
  auto survey = repaired({"4.16"});
  survey.recommendations.push_back({.id = "2", .action = "monitor"});
  const auto policy = sample::house();
  base::Diagnostics sink;
  const auto all = assess::addenda_json(survey, policy, assess::assess(survey, policy, sink));
  REQUIRE(all.size() == 1);
  const auto &item = all[0]["items"][0];
  CHECK(item["outcome"] == "closed");
  CHECK(item["readings"][0]["at"] == "PW 2");
  CHECK(item["readings"][0]["verdict"] == "too-close");
  CHECK(item["readings"][0]["margin"] == "0.16");
  CHECK(all[0]["open"] == nlohmann::ordered_json::array({"2"}));
}
