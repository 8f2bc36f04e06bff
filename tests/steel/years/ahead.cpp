#include <catch2/catch.hpp>

#include "compared.h"
#include "strakebook/steel/years/rates.h"

using namespace strakebook;
using namespace strakebook::sample;
using assess::Verdict;

namespace {

/// One mark, `then` five years ago and `now`; judged by 4.0 mm.
survey::Survey one_mark(const std::string &then, const std::string &now) {
  auto builder = side_plate();
  builder.mark("PW", "9", now);
  builder.made.criteria = {{.id = "absolute-4.0"}};
  builder.made.earlier = {earlier_survey("V21", "2021-10-14")};
  read_then(builder.made.earlier.front(), "PW", "9", then);
  return builder.made;
}

Verdict verdict_by(survey::Survey survey, const std::string &next_survey) {
  survey.answer.next_survey_by = {day(next_survey), {}};
  return history_of(survey).zones.front().rate.value().verdict;
}

} // namespace

// API 570 style: half the remaining life at the upper rate, capped by the house.
TEST_CASE("the next look is at half the shortest life at the upper rate, or at the cap") {
  // 0.5 in five years, upper (0.5 + 0.2326) / 5 = 0.1465 a year: 0.6 above the limit lasts 4.095 years, half of it 2 years and 17 days
  const auto soon = history_of(one_mark("5.1", "4.6")).next_look.value();
  CHECK(soon.date == day("2028-10-31"));
  CHECK(soon.at == "PW 9");
  CHECK_FALSE(soon.capped);
  const auto late = history_of(one_mark("5.9", "5.4")).next_look.value(); // half of 9.6 years is beyond 36 months
  CHECK(late.date == day("2029-10-14"));
  CHECK(late.capped);
  const auto never = history_of(one_mark("5.0", "5.6")).next_look.value(); // no life follows from growth
  CHECK(never.date == day("2029-10-14"));
  CHECK(never.at.empty());
  const auto now = history_of(one_mark("4.5", "4.0")).next_look.value(); // at the limit: no life is left
  CHECK(now.date == day("2026-10-14"));
}

TEST_CASE("the rate criterion looks as far as the next survey") {
  const auto survey = one_mark("5.1", "4.6"); // life 6 years at the mean rate, 4.095 at the upper
  CHECK(verdict_by(survey, "2030-10-14") == Verdict::meets);
  CHECK(verdict_by(survey, "2031-10-14") == Verdict::too_close);
  CHECK(verdict_by(survey, "2032-10-14") == Verdict::too_close);  // 6 years: at the mean rate it just lasts
  CHECK(verdict_by(survey, "2032-10-15") == Verdict::falls_short);
  CHECK(verdict_by(one_mark("5.0", "5.6"), "2040-10-14") == Verdict::meets); // nothing ends it
  CHECK(verdict_by(one_mark("4.5", "4.0"), "2027-10-14") == Verdict::falls_short); // it does not outlast today
  const auto by_life = history_of(survey); // no day is named: the next look by the life itself
  CHECK(by_life.next_survey == by_life.next_look->date);
  CHECK(by_life.zones.front().rate->verdict == Verdict::meets);
}

// Worked by hand: u 0.03 and 0.04 give sqrt(u1^2 + u2^2) = 0.05 exactly, so the upper rate is exact too: (0.5 + 0.08225) / 5.
TEST_CASE("a margin that lasts exactly to the horizon keeps it, a nanometre less does not") {
  const years::Known then{length("5.5"), {policy::square(length("0.03").nm()), 1}};
  const years::Known now{length("5"), {policy::square(length("0.04").nm()), 1}};
  const auto band = decimal("1.645");
  const auto rate = years::rate_since("V", then, now, {5, 1}, band);
  const auto keeps = [&](const std::string &margin) { return years::keeps(length(margin), rate, {5, 1}, band); };
  CHECK(keeps("0.582250") == Verdict::meets);
  CHECK(keeps("0.582249") == Verdict::too_close);
  CHECK(keeps("0.500000") == Verdict::too_close);
  CHECK(keeps("0.499999") == Verdict::falls_short);
  CHECK(keeps("0") == Verdict::falls_short);
}

TEST_CASE("the gravest place speaks for the zone") {
  auto survey = one_mark("5.1", "4.6");
  SurveyBuilder more;
  more.made = survey;
  more.mark("PW", "12", "5.5");
  read_then(more.made.earlier.front(), "PW", "12", "5.6");
  more.made.answer.next_survey_by = {day("2031-10-14"), {}};
  const auto history = history_of(more.made);
  const auto &zone = history.zones.front();
  CHECK(zone.rate->verdict == Verdict::too_close);
  CHECK(zone.rate->at == "PW 9");
  CHECK(zone.rate->limit_of == "absolute-4.0");
  CHECK(zone.shortest_at == "PW 9");
  CHECK(history.horizon.value() == base::Ratio{5, 1});
}

TEST_CASE("where nothing is matched no rate is judged") {
  auto survey = one_mark("5.1", "4.6");
  survey.earlier.front().marks.front().station = station("3");
  const auto history = history_of(survey);
  CHECK_FALSE(history.zones.front().rate);
  CHECK(history.surveys.front().matched == 0);
  CHECK_FALSE(history.next_look);
}

TEST_CASE("a pit that is new stands against the plate read there before, not against the years since she was built") {
  auto survey = one_mark("5.7", "5.6");
  survey.pits = {{.id = "P1", .at = {.row = "PW", .station = station("9.1")}, .adjacent = mm("5.6"), .depth = mm("1.3"), .gauge = "depth"}};
  const auto history = history_of(survey);
  const auto &pit = history.places.back();
  REQUIRE(pit.id == "P1");
  REQUIRE(pit.earlier.size() == 1);
  CHECK(pit.earlier.front().at == "9");
  CHECK(pit.short_term->per_year == base::Ratio{280'000, 1}); // 5.7 to 4.3 in five years
  CHECK(pit.change == years::Change::lost);
  CHECK_FALSE(pit.as_built);
  survey.pits.front().at.station = station("9.16"); // beyond the radius
  CHECK(history_of(survey).places.back().earlier.empty());
}

TEST_CASE("where a zone is compared, a place that no earlier survey has speaks for it by what it lost since she was built") {
  auto survey = one_mark("5.7", "5.6");
  survey.vessel.built = survey::Fact{.text = words("2006")};
  survey.answer.next_survey_by = {day("2028-10-14"), {}};
  CHECK(history_of(survey).zones.front().rate->at == "PW 9");
  survey.pits = {{.id = "P1", .at = {.row = "PW", .station = station("12")}, .adjacent = mm("5.6"), .depth = mm("1.5"), .gauge = "depth"}};
  const auto rate = history_of(survey).zones.front().rate.value(); // 1.9 in 20.3 years: 0.1 is left for 1.07 years
  CHECK(rate.at == "P1");
  CHECK(rate.verdict == Verdict::falls_short);
}

TEST_CASE("the upper rate is the greater of both terms' upper rates, though the mean rate of the other governs") {
  auto survey = one_mark("5.05", "4.6"); // 0.45 in five years
  survey.earlier.push_back(earlier_survey("V06", "2006-10-14"));
  read_then(survey.earlier.back(), "PW", "9", "6.45"); // 1.85 in twenty: 0.0925 a year, and little doubt of it
  const auto history = history_of(survey);
  const auto &place = history.places.front();
  REQUIRE(place.governs == years::Governs::long_term);
  CHECK(place.short_term->upper > place.long_term->upper);
  CHECK(years::upper_rate(place) == place.short_term->upper);
  CHECK(life_to(place, "absolute-4.0").upper.value() == Approx(0.6e6 / place.short_term->upper));
}
