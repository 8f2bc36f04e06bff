#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using policy::DecisionKind;
using sample::contains;

namespace {

std::string section(const sample::Composed &sample, const std::string &id) {
  return sample::section_text(compose::compose(sample.source()), id);
}

base::Measured measured(const std::string &text, base::Unit unit) {
  base::MeasuredError wrong;
  return base::parse_measured(text, unit, wrong).value();
}

sample::Composed using_criteria(const std::vector<std::string> &ids) {
  auto sample = sample::small_survey();
  sample.survey.criteria.clear();
  for (const auto &id : ids)
    sample.survey.criteria.push_back({.id = id});
  assess_again(sample);
  return sample;
}

sample::Composed judged_by(DecisionKind kind) {
  auto sample = sample::small_survey();
  sample.house.policy.decision.kind = kind;
  if (kind == DecisionKind::simple_acceptance)
    sample.house.policy.decision.band = {};
  assess_again(sample);
  return sample;
}

} // namespace

TEST_CASE("a probability is whole percent rounded down, never nought, a hundred, or up to 95 or 50") {
  const auto sample = sample::small_survey();
  const auto source = sample.source();
  const house::SectionPlan plan;
  const compose::Scope scope{source, plan, "9"};
  const auto text = [&](double p) { return compose::probability_text(scope, p); };
  CHECK(text(0.5) == "50\u00A0%");
  CHECK(text(0.499999) == "49\u00A0%");
  CHECK(text(0.95) == "95\u00A0%");
  CHECK(text(0.949999) == "94\u00A0%");
  CHECK(text(0.99) == "99\u00A0%");
  CHECK(text(0.990001) == "over 99\u00A0%");
  CHECK(text(1.0) == "over 99\u00A0%");
  CHECK(text(0.01) == "1\u00A0%");
  CHECK(text(0.009999) == "under 1\u00A0%");
  CHECK(text(0.0) == "under 1\u00A0%");
  CHECK(compose::probability_text(scope, std::nullopt) == "–");
}

TEST_CASE("the words of the verdicts follow the decision rule") {
  const auto three = judged_by(DecisionKind::guard_band), four = judged_by(DecisionKind::four_classes),
             two = judged_by(DecisionKind::simple_acceptance);
  // P1 leaves 4.4, 0.10 under the 4.50 of 25 %, inside a doubt of 0.23
  CHECK(contains(section(three, "assessment"), "[too-close]too close to call\n"));
  CHECK(contains(section(four, "assessment"), "[too-close]too close to call, past the limit\n"));
  CHECK(contains(section(four, "assessment"), "P1 is too close to call, past the limit under 25 % of original lost."));
  CHECK(contains(section(two, "assessment"), "25 % of original lost\n4.50\n4.4\n\u22120.10\n23 %\n[falls-short]falls short"));
  CHECK(contains(section(two, "assessment"), "Simple acceptance (JCGM 106:2012): the figure decides, its doubt is not counted."));
  CHECK(contains(section(two, "answer"), "it is met with 0.40 mm in hand; the doubt is not counted"));
  CHECK(contains(section(two, "results"), "doubt not counted"));
  CHECK(contains(section(two, "instruments"), "is not counted in its verdict"));
  for (const auto &[sample, says] : {std::pair{&three, "A margin within the doubt is too close to call. A probability"},
                                     {&four, "told apart by the side on which the bare figure stands"},
                                     {&two, "The figure decides; its doubt is not counted."}}) {
    CHECK(contains(section(*sample, "criteria"), says));
    CHECK(contains(section(*sample, "criteria"), "JCGM 106:2012"));
  }
}

TEST_CASE("a criterion says what it asks of each zone, and where it does not apply, why") {
  auto sample = using_criteria({"absolute-4.0", "percent-15", "percent-25", "percent-25-thin", "passenger-rule"});
  const auto text = section(sample, "criteria");
  CHECK(contains(text, "4.00 (every zone)"));
  CHECK(contains(text, "not applied (every zone): light scantlings are not declared"));
  CHECK(contains(text, "Only for a vessel declared to have light scantlings"));
  CHECK(contains(text, "4.50 (wind-and-water); not applied (bottom): original not known well enough"));
  CHECK(contains(text, "not applied (wind-and-water): original thicker than 4.0 mm; not applied (bottom): original not"));
  CHECK(contains(text, "not applied (every zone): not declared to carry passengers"));
  CHECK(contains(section(sample, "results"), "not applied: light scantlings are not declared"));
  CHECK(contains(section(sample, "assessment"), "original thicker than 4.0 mm"));
}

TEST_CASE("the working of a formula can be done again from what is printed") {
  auto sample = using_criteria({"inland-rule", "passenger-rule"});
  sample.survey.vessel.carries.text = "passengers";
  assess_again(sample);
  const auto text = section(sample, "criteria");
  CHECK(contains(text, "side, f 1, b 1, c 1\n2.580\n2.092\ngoverns\n3.00\n2.70, worn under the floor"));
  CHECK(contains(text, "the greater of 0.006 a √T, by draught 0.70 m †, and 0.55 f √L, by length 18.0 m because the length of the waterline"));
  sample.survey.vessel.waterline_length = sample.survey.vessel.length;
  sample.survey.vessel.waterline_length->length = measured("17.4 m", base::Unit::metre);
  assess_again(sample);
  CHECK(contains(section(sample, "criteria"), "0.55 f √L, by waterline length 17.4 m; frame spacing counted as a = 500"));
}

TEST_CASE("another reading of a rule is said in one computed sentence where it changes a verdict") {
  auto sample = using_criteria({"absolute-4.0", "inland-rule"});
  CHECK_FALSE(contains(section(sample, "assessment"), "another reading"));
  sample.survey.zones[0].plating = policy::Plating::bilge;
  sample.survey.pits[0].depth = measured("2.0", base::Unit::millimetre);
  assess_again(sample); // P1 leaves 3.6: 0.375 over 3.225, 0.15 under 3.75 inside a doubt of 0.23
  CHECK(contains(section(sample, "assessment"),
                 "Where the text of a rule is silent, another reading would judge otherwise: European inland rule minimum, "
                 "3.75 mm with the floor multiplied by the bilge factor: P1 (3.6) too close to call, in place of meets."));
}

TEST_CASE("substantial corrosion stands beside the verdict of an allowable margin, and nothing else does") {
  auto sample = using_criteria({"margin-25", "margin-20", "percent-25"});
  sample.survey.pits[0].depth = measured("1.0", base::Unit::millimetre);
  assess_again(sample); // P1 leaves 4.6 of 6.0
  for (const char *part : {"results", "assessment"}) {
    const auto text = section(sample, part);
    CHECK(contains(text, "too close to call · substantial corrosion, under 4.875"));
    CHECK(contains(text, "falls short · past substantial corrosion") == false); // 4.6 is 0.20 under 4.80, inside 0.23
    CHECK(contains(text, "too close to call · past substantial corrosion"));
  }
  CHECK(contains(section(sample, "criteria"), "Substantial corrosion is a loss beyond 75 % of what may go"));
}
