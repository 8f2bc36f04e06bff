#include <catch2/catch.hpp>

#include <random>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/budget.h"

using namespace strakebook;
using assess::Verdict;
using sample::decimal;
using sample::length;
using sample::mm;

namespace {

survey::DoubtComponent component(const std::string &id, const std::string &u, const std::string &degrees = "") {
  survey::DoubtComponent made{.id = id, .u = mm(u)};
  if (!degrees.empty()) made.degrees = decimal(degrees);
  return made;
}

std::vector<assess::DoubtPart> parts(std::vector<survey::DoubtComponent> components, const std::string &thickest = "6") {
  return assess::doubt_parts({.id = "ut", .doubt = std::move(components)}, length(thickest));
}

base::Decimal factor(std::vector<survey::DoubtComponent> components) {
  return assess::factor_for(sample::house().decision, assess::effective_degrees(parts(std::move(components))));
}

} // namespace

// JCGM 100:2008, annex H.1 (end gauge), its nanometres written as micrometres because a gauge's doubt is a whole number of
// nanometres: 25 (nu 18), 9.7 (25.6), 2.9 (50), 16.6 (2); uc 32, nu_eff 16.7 cut to 16, U99 93 with t of two-sided 99 %.
TEST_CASE("the end gauge of the GUM: combined doubt, effective degrees and expanded uncertainty") {
  const auto all = parts({component("block", "0.0250", "18"), component("repeatability", "0.0097", "25.6"),
                          component("surface", "0.0029", "50"), component("velocity", "0.0166", "2")});
  const auto u = assess::combined(all);
  CHECK(u == length("0.031672")); // root of 1003.06, rounded up
  CHECK(base::mm_text(u * 1000, 0) == "32");
  CHECK(assess::effective_degrees(all) == 16);
  const auto t99 = assess::student_factor({995, 1000}, 16); // one-sided 99.5 % is two-sided 99 %
  CHECK(t99 == decimal("2.921"));
  CHECK(base::mm_text(base::scaled_up(u, t99.ratio()) * 1000, 0) == "93");
}

// Computed independently in R 4.2: qt(0.975, 9) = 2.262157, qnorm(0.95) = 1.644854.
TEST_CASE("Student's factor is rounded up to three decimals and comes down to the normal one") {
  CHECK(assess::student_factor({975, 1000}, 9) == decimal("2.263"));
  CHECK(assess::student_factor({95, 100}, 999'999'999) == decimal("1.645"));
}

// JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has u = a / root 3.
TEST_CASE("each way to give a component, rounded up to a nanometre") {
  const auto all = parts({{.id = "resolution", .half_width = mm("0.05")}, {.id = "velocity", .share = decimal("0.5")}}, "6.2");
  CHECK(all[0].u == length("0.028868"));
  CHECK(all[1].u == length("0.031"));
  CHECK(assess::combined(all) == length("0.04236")); // root of 0.0025 / 3 + 0.000961
  CHECK_FALSE(assess::effective_degrees(all));
}

TEST_CASE("effective degrees are exact: one component keeps its own, and many equal ones add up") {
  CHECK(assess::effective_degrees(parts({component("block", "0.1", "9")})) == 9);
  CHECK(assess::effective_degrees(parts({component("block", "0.1", "9"), component("surface", "0.1", "9")})) == 18);
  CHECK(assess::effective_degrees(parts({component("block", "0.1", "9"), component("surface", "0.1")})) == 36);
  CHECK_FALSE(assess::effective_degrees(parts({component("block", "1"), component("surface", "0.000001", "1")})));
}

TEST_CASE("the factor is never under the rule's band, and simple acceptance stays simple") {
  CHECK(factor({component("block", "0.1")}) == decimal("1.645"));
  CHECK(factor({component("block", "0.1", "9")}) == decimal("1.834")); // qt(0.95, 9) = 1.833113
  auto rule = sample::house().decision;
  rule.band = decimal("2");
  CHECK(assess::factor_for(rule, 9) == decimal("2"));
  rule.band = decimal("0");
  CHECK(assess::factor_for(rule, 1) == decimal("0"));
}

TEST_CASE("a budget is what a mark is judged with, and its share is of the thickest figure taken") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.2", "6.0/6.1"}).criteria({"absolute-4.0"}).made;
  survey.gauges[0].u.reset();
  survey.gauges[0].doubt = {component("repeatability", "0.1", "9"), {.id = "velocity", .share = decimal("0.5")}};
  const auto result = sample::assessed(survey);
  const auto &gauge = result.gauges[0];
  CHECK(gauge.thickest == length("6.1"));
  CHECK(gauge.u == length("0.104548")); // root of 0.01 + 0.0305 squared
  CHECK(gauge.degrees == 10);           // 9 (1 + 0.0930)2 = 10.75
  CHECK(gauge.factor == decimal("1.813")); // qt(0.95, 10) = 1.812461
  CHECK(gauge.band_nm == length("0.189546"));
  CHECK(result.zones[0].subjects[0].band_nm == gauge.band_nm);
  CHECK(result.zones[0].subjects[0].results[0].verdict == Verdict::meets); // 0.2 in hand
  survey.gauges[0].doubt[0].degrees = decimal("4"); // nu_eff 4, t 2.132: w 0.2229
  CHECK(sample::assessed(survey).zones[0].subjects[0].results[0].verdict == Verdict::too_close);
}

TEST_CASE("under a pit the degrees of freedom of both gauges count") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5"}).pit("P1", "PW", "1.2", "5", "1").made;
  survey.gauges[0].u.reset();
  survey.gauges[0].doubt = {component("repeatability", "0.3", "9")};
  survey.gauges[1].u = length("0.4");
  const auto pit = sample::assessed(survey).zones[0].subjects[1];
  CHECK(pit.u == length("0.5"));
  CHECK(pit.factor == assess::student_factor({95, 100}, 69)); // 0.5^4 / (0.3^4 / 9) = 69.4
  CHECK(pit.factor.ratio() > decimal("1.645").ratio());
}

TEST_CASE("a wider doubt, or fewer degrees of freedom, never turns too close to call into meets") {
  std::mt19937 random(20261127);
  const auto any = [&](int from, int to) { return std::uniform_int_distribution<int>(from, to)(random); };
  int improved = 0, called = 0;
  for (int round = 0; round < 400; ++round) {
    const assess::Fraction margin{any(-400'000, 400'000), 1};
    const int degrees = any(2, 40);
    const auto verdict = [&](std::int64_t u, int nu) {
      return assess::judged(margin, {.u2 = assess::variance(assess::Length::nanometres(u)),
                                     .factor = assess::factor_for(sample::house().decision, nu)});
    };
    const int u = any(10'000, 200'000);
    const auto before = verdict(u, degrees), wider = verdict(u + any(1, 100'000), degrees), fewer = verdict(u, any(1, degrees - 1));
    for (const auto after : {wider, fewer}) improved += before == Verdict::too_close && after != Verdict::too_close;
    called += before == Verdict::meets;
  }
  CHECK(improved == 0);
  CHECK(called > 50);
}
