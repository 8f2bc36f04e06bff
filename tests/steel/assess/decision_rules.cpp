#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"

// JCGM 106:2012: simple acceptance (shared risk), and a guard band of w at a lower limit.
using namespace strakebook;
using assess::Bare;
using assess::Verdict;
using policy::DecisionKind;

namespace {

assess::CriterionResult judged(const std::string &figure, DecisionKind kind) {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {figure}).criteria({"absolute-4.0"});
  auto policy = sample::house();
  policy.decision.kind = kind;
  if (kind == DecisionKind::simple_acceptance) policy.decision.band = {};
  return sample::assessed(survey.made, policy).zones[0].subjects[0].results[0];
}

} // namespace

TEST_CASE("under simple acceptance the figure decides, and at the limit is not over it") {
  CHECK(judged("4.000001", DecisionKind::simple_acceptance).verdict == Verdict::meets);
  CHECK(judged("4.0", DecisionKind::simple_acceptance).verdict == Verdict::meets);
  CHECK(judged("4.0", DecisionKind::simple_acceptance).bare == Bare::at_limit);
  CHECK(judged("3.999999", DecisionKind::simple_acceptance).verdict == Verdict::falls_short);
  CHECK(judged("4.0", DecisionKind::simple_acceptance).conformance == 0.5);
}

TEST_CASE("four classes are the guard band's, the bare figure telling what is too close apart") {
  struct Case { const char *figure; Verdict verdict; Bare bare; };
  const auto c = GENERATE(Case{"4.1645", Verdict::meets, Bare::inside}, Case{"4.164499", Verdict::too_close, Bare::inside},
                          Case{"4.000001", Verdict::too_close, Bare::inside}, Case{"4.0", Verdict::too_close, Bare::at_limit},
                          Case{"3.999999", Verdict::too_close, Bare::over}, Case{"3.835501", Verdict::too_close, Bare::over},
                          Case{"3.8355", Verdict::falls_short, Bare::over});
  CAPTURE(c.figure);
  for (const DecisionKind kind : {DecisionKind::guard_band, DecisionKind::four_classes}) {
    CHECK(judged(c.figure, kind).verdict == c.verdict);
    CHECK(judged(c.figure, kind).bare == c.bare);
  }
}

TEST_CASE("the assessment says by which rule it was made") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5"}).criteria({"absolute-4.0"});
  auto policy = sample::house();
  policy.decision = {.name = "ours", .kind = DecisionKind::four_classes, .band = sample::decimal("2"), .source = "JCGM 106:2012"};
  const nlohmann::json json = assess::json(survey.made, sample::assessed(survey.made, policy));
  CHECK(json["decision_rule"] == nlohmann::json{{"rule", "four-classes"}, {"name", "ours"}, {"band", "2"}, {"source", "JCGM 106:2012"}});
}
