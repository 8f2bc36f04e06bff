#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using sample::length;
using sample::mm;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::station;
using sample::words;

namespace {

policy::Policy house_of_years() {
  auto policy = sample::house();
  policy.years = {.match_radius = length("150"), .life_part = {1, 2}, .longest_months = 36};
  return policy;
}

/// The complete final beside a survey of 2021 of the same four marks, which were 0.1 mm thicker then.
survey::Survey five_years_on() {
  auto survey = sample::complete_final();
  survey::EarlierSurvey then{.id = "V21", .inspected = {{2021, 10, 14}, {}}, .u = length("0.1")};
  then.datum.zero = station("0 m");
  then.datum.span = sample::at_line(70);
  for (const auto &mark : survey.marks) {
    then.marks.push_back(mark);
    for (auto &repeat : then.marks.back().repeats) repeat.value = repeat.value + length("0.1");
  }
  survey.earlier = {then};
  return survey;
}

} // namespace

TEST_CASE("an earlier survey that can be compared gives nothing to answer") {
  CHECK(reviewed(five_years_on(), house_of_years()).empty());
}

TEST_CASE("a zero known less nearly than places are told apart by is to be acknowledged") {
  auto survey = five_years_on();
  survey.earlier.front().datum.zero_within = mm("150");
  CHECK(reviewed(survey, house_of_years()).empty());
  survey.earlier.front().datum.zero_within = mm("150.000001");
  const auto found = reviewed(survey, house_of_years());
  REQUIRE(found.size() == 2); // and nobody answers for it
  CHECK(found.front().code == Code::earlier_datum);
  CHECK(found.front().subject == "earlier-zero V21");
  CHECK(found.front().span.line == 70);
  survey.acknowledgements = {{.subject = "earlier-zero V21", .reason = words("The marks were found again by their paint.")}};
  CHECK(only(reviewed(survey, house_of_years()), Code::earlier_datum).severity == base::Severity::warning);
}

TEST_CASE("places that would lie off the hull, and none in common, ask after the datum") {
  auto survey = five_years_on();
  survey.earlier.front().datum.counts = survey::Counts::forward; // against this datum: all of it before the stem
  const auto found = reviewed(survey, house_of_years());
  REQUIRE(found.size() == 4);
  CHECK(found.at(0).code == Code::earlier_beyond);
  CHECK(says(found.at(0), "BC 1 and 3 more of V21 would lie off the hull"));
  CHECK(found.at(1).code == Code::earlier_apart);
}

TEST_CASE("a place thicker than before beyond the doubt is to be answered for") {
  auto survey = five_years_on();
  survey.earlier.front().marks.front().repeats = {mm("11.0")}; // 11.4 now
  const auto found = reviewed(survey, house_of_years());
  REQUIRE(found.size() == 2);
  CHECK(found.front().code == Code::place_grown);
  CHECK(found.front().subject == "grown BC 1");
  CHECK(says(found.front(), "BC 1 is 0.4 mm thicker than V21 had it"));
}

TEST_CASE("a next survey later than the life that is left, or than the house's longest interval, is to be answered for") {
  auto survey = five_years_on();
  survey.answer.next_survey_by = {{2029, 10, 14}, {}};
  CHECK(reviewed(survey, house_of_years()).empty());
  survey.answer.next_survey_by->value = {2029, 10, 15};
  auto found = reviewed(survey, house_of_years());
  REQUIRE(found.size() == 2);
  CHECK(found.front().code == Code::next_look_late);
  CHECK(says(found.front(), "later than the longest interval of this house allows"));
  for (auto &mark : survey.earlier.front().marks) mark.repeats = {mm("33.0")}; // 7.4 above 4.0 now, and over 21 lost
  survey.answer.next_survey_by->value = {2028, 10, 14};
  found = reviewed(survey, house_of_years());
  REQUIRE(found.size() == 2);
  CHECK(says(found.front(), "later than the life that is left at BC"));
}

TEST_CASE("a measured statement may give what an earlier survey had at a place, and what has gone since") {
  auto survey = five_years_on();
  auto &facts = survey.decisions.front().facts;
  facts = {{.kind = survey::StatementKind::measured, .text = words("BC 1 keeps 11.4. In 2021 BC 1 kept 11.5. BC 1 lost 0.1 since.")}};
  CHECK(reviewed(survey, house_of_years()).empty());
  facts.front().text = words("In 2021 BC 1 kept 11.7.");
  CHECK(reviewed(survey, house_of_years()).front().code == Code::figure_misquoted);
}
