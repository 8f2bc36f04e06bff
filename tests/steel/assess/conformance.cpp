#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/conformance.h"

using namespace strakebook;
using assess::Verdict;
using sample::length;
using sample::result_of;

namespace {

double at(const std::string &figure, const std::string &limit, const std::string &u) {
  const auto margin = length(figure) - length(limit);
  return assess::conformance({margin.nm(), 1}, assess::variance(length(u))).value();
}

} // namespace

// JCGM 106:2012 clause 7, one lower limit: pc = Phi((y - TL) / u). Values of the normal distribution function as tables give them.
TEST_CASE("the probability of conformity of JCGM 106:2012") {
  CHECK(at("3.81", "3.81", "0.10") == 0.5);
  CHECK(assess::conformance_text(at("3.974485", "3.81", "0.1")) == "0.950000"); // 1.64485 u: the nanometre below 1.644854 u
  CHECK(at("3.974486", "3.81", "0.1") == Approx(0.95).margin(2e-6));
  CHECK(assess::conformance_text(at("4.01", "3.81", "0.10")) == "0.977250"); // 2 u
  CHECK(at("4.01", "3.81", "0.10") == Approx(0.97725).margin(5e-6));
  CHECK(assess::conformance_text(at("4.05", "3.81", "0.10")) == "0.991802"); // 2.4 u
  CHECK(at("3.61", "3.81", "0.10") == Approx(1 - 0.97725).margin(5e-6));
}

TEST_CASE("a probability is never written as certainty, and without doubt there is none") {
  CHECK(assess::conformance_text(at("9", "3", "0.1")) == "0.999999");
  CHECK(assess::conformance_text(at("1", "3", "0.1")) == "0.000001");
  CHECK_FALSE(assess::conformance({1, 1}, 0));
}

TEST_CASE("every place and every criterion has its probability; a pit's counts both gauges") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.24", "5.0"}).pit("P1", "PW", "1.2", "5.04", "0.8")
                    .criteria({"absolute-4.0", "percent-30"}).decide("W", "monitor", "absolute-4.0");
  const auto result = sample::assessed(survey.made);
  const auto standing = [](const auto &place) { return assess::conformance_text(*place.standing->result.conformance); };
  CHECK(standing(result.marks[0]) == "0.991802"); // 2.4 u
  CHECK(standing(result.pits[0]) == "0.955157");  // 0.24 in hand over 0.1 sqrt(2): 1.69706 u
  const auto &plate = result.zones[0].subjects[0];
  CHECK(assess::conformance_text(*result_of(plate, "percent-30").conformance) == "0.655422"); // 0.4 u
  const auto json = assess::json(survey.made, result);
  CHECK(json["marks"][0]["standing"]["conformance"] == "0.991802");
  CHECK(json["zones"][0]["subjects"][0]["results"][1]["conformance"] == "0.655422");
}

TEST_CASE("a probability decides nothing: the band does") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.18"}).criteria({"absolute-4.0"});
  const auto verdict = [&](const policy::Policy &policy) {
    return sample::assessed(survey.made, policy).zones[0].subjects[0].results[0];
  };
  auto policy = sample::house();
  CHECK(verdict(policy).verdict == Verdict::meets); // 1.8 u, by 1.645 u
  policy.decision.band = sample::decimal("2");
  CHECK(verdict(policy).verdict == Verdict::too_close);
  CHECK(*verdict(policy).conformance == Approx(0.964070).margin(1e-6));
}
