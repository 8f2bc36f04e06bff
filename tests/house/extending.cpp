#include <catch2/catch.hpp>

#include "house/layouts.h"

using namespace strakebook;
using base::Code;
using base::Diagnostics;

namespace {

void refused(const std::string &body, Code code, const std::string &part = {}) {
  INFO(body);
  const test::Layouts layouts;
  Diagnostics sink;
  CHECK_FALSE(layouts.extended(body, sink));
  test::check_only(sink, code, part);
}

house::House accepted(const std::string &body) {
  INFO(body);
  const test::Layouts layouts;
  Diagnostics sink;
  auto house = layouts.extended(body, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  return *house;
}

} // namespace

TEST_CASE("a threshold moves the strict way only") {
  CHECK(accepted("policy: {opinion: {least-marks: 6}}").policy.least_marks == 6);
  CHECK(accepted("policy: {opinion: {least-marks: 5}}").policy.least_marks == 5);
  refused("policy: {opinion: {least-marks: 4}}", Code::layout_loosens, "5 or more");
  refused("policy: {statistics: {least-for-statistics: 9}}", Code::layout_loosens, "10 or more");
  refused("policy: {statistics: {confidence: 90 %}}", Code::layout_loosens, "95 % or more");
  refused("policy: {checks: {block-agreement: 0.2 mm}}", Code::layout_loosens, "0.1 mm or less");
  refused("policy: {bases: {\"owner's word\": {weak: no}}}", Code::layout_loosens);
  refused("policy: {actions: {insert: {adverse: no}}}", Code::layout_loosens);
  refused("policy: {checks: {retake-within: 0.2 mm}}", Code::layout_loosens, "0.3 mm or more");
  refused("policy: {checks: {single-echo-factor: {most: 2}}}", Code::layout_loosens, "2.5 or more");
  refused("policy: {checks: {single-echo-factor: {least: 3}}}", Code::layout_order, "least");
  refused("policy: {doubt: {source: ours, coverage: 90 %}}", Code::layout_loosens, "95 % or more");
  refused("policy: {extent: {source: ours, least-spacing: 50 mm}}", Code::layout_loosens, "100 mm or more");
  refused("policy: {extent: {source: ours, extensive-from: 20 %}}", Code::layout_loosens, "15 % or less");
  refused("policy: {pitting: {source: ours, least-measured: 4}}", Code::layout_loosens, "5 or more");
  refused("policy: {years: {source: ours, match-radius: 200 mm}}", Code::layout_loosens, "150 mm or less");
  refused("policy: {years: {source: ours, life-part: 60 %}}", Code::layout_loosens, "50 % or less");
  refused("policy: {years: {source: ours, longest-months: 48}}", Code::layout_loosens, "36 or less");
  refused("policy: {years: {longest-months: 24}}", Code::missing_key, "source");
  refused("policy: {doubt: {source: ours, band: 0}}", Code::layout_loosens, "1.645 or more");
}

// JCGM 106:2012: a guard band calls fewer places than simple acceptance does; four classes tell more than three.
TEST_CASE("a decision rule moves the strict way only") {
  using policy::DecisionKind;
  CHECK(accepted("policy: {doubt: {source: ours, rule: four-classes}}").policy.decision.kind == DecisionKind::four_classes);
  CHECK(accepted("policy: {doubt: {source: ours, band: 2}}").policy.decision.band == base::Decimal{2, 0});
  refused("policy: {doubt: {source: ours, rule: simple-acceptance}}", Code::layout_loosens, "guard-band or one that calls less");
  refused("policy: {doubt: {source: ours, band: 1.64}}", Code::layout_loosens, "1.645 or more");
  refused("policy: {doubt: {rule: four-classes}}", Code::missing_key, "source");

  const test::Layouts layouts;
  layouts.change("base/policy.yaml", "rule: guard-band", "rule: four-classes");
  Diagnostics sink;
  CHECK_FALSE(layouts.extended("policy: {doubt: {source: ours, rule: guard-band}}", sink));
  test::check_only(sink, Code::layout_loosens, "four-classes");
}

TEST_CASE("checks of copying are tightened with a source, and not loosened") {
  const auto copying = [](const std::string &what) { return "policy: {checks: {copying: {source: ours, " + what + "}}}"; };
  const auto checks = accepted(copying("mirror-apart: 0.8 mm, run-marks: 5, unit-share: 30 %")).policy.copying;
  CHECK(checks.mirror_apart == base::Length::micrometres(800));
  CHECK(checks.run_marks == 5);
  CHECK(checks.unit_share == base::Ratio{3, 10});
  CHECK(checks.source == "ours");
  refused(copying("mirror-apart: 1.1 mm"), Code::layout_loosens, "1.0 mm or less");
  refused(copying("run-marks: 7"), Code::layout_loosens, "6 or less");
  refused(copying("unit-share: 20 %"), Code::layout_loosens, "25 % or more");
  refused(copying("agree: 0.2 mm"), Code::layout_loosens, "0.3 mm or more");
  refused("policy: {checks: {copying: {run-marks: 5}}}", Code::missing_key, "source");
}

TEST_CASE("nothing is dropped, emptied or re-ordered") {
  refused("cautions: {hot-work: }", Code::layout_loosens, "hot-work");
  refused("cautions: {hot-work: {text: ''}}", Code::layout_loosens);
  refused("cautions: {as-found: {when: afloat}}", Code::layout_loosens, "always");
  refused("sections: {drop: [limitations]}", Code::layout_loosens);
  refused("sections: {limitations: {after: scope}}", Code::layout_loosens, "order");
}

TEST_CASE("lists of requirements grow") {
  const auto house =
      accepted("policy: {required-rows: [PE, SE], required-fields: [report.place, datum.from]}");
  CHECK(house.policy.required_rows == std::vector<std::string>{"PE", "SE"});
  CHECK(house.policy.required_fields.front() == "report.number");
  CHECK(house.policy.required_fields.back() == "report.place");
}

TEST_CASE("a criterion, a ladder and a tolerance change with a source named, or not at all") {
  const auto house =
      accepted("policy: {criteria: {absolute-4.0: {limit: 4.5 mm, authority: the underwriter's letter}}}");
  CHECK(house.policy.criteria.at("absolute-4.0").limit == base::Length::micrometres(4500));
  refused("policy: {criteria: {absolute-4.0: {limit: 4.5 mm}}}", Code::missing_key, "authority");
  refused("policy: {ladder: {rungs: {unsafe: {below: 2.8 mm}}}}", Code::missing_key, "source");
}

TEST_CASE("criteria and rungs may be added at their place") {
  const std::string criterion = "{name: 5.0 mm remaining, kind: absolute, limit: 5 mm, authority: ours, "
                                "edition: none, scope: any, after: absolute-4.0}";
  CHECK(accepted("policy: {criteria: {absolute-5.0: " + criterion + "}}").policy.criteria_order[1] ==
        "absolute-5.0");
  const std::string advice = "{actions: [monitor], words: monitor}";
  const std::string rung = "{when: under 3.5 mm, below: 3.5 mm, isolated: " + advice +
                           ", extensive: " + advice + ", classes: [A], after: ";
  CHECK(accepted("policy: {ladder: {source: ours, rungs: {between: " + rung + "thin}}}}")
            .policy.ladder.rungs[2]
            .id == "between");
  refused("policy: {ladder: {source: ours, rungs: {between: " + rung + "low}}}}", Code::layout_order,
          "between");
}

TEST_CASE("words may change, their place holders may not be invented") {
  CHECK(house::word(accepted("words: {labels.foot: '{page}/{pages}'}").wording, "labels.foot") ==
        "{page}/{pages}");
  CHECK(house::word(accepted("words: {labels: {foot: '{page}'}}").wording, "labels.foot") == "{page}");
  refused("words: {labels: {foot: 'page {page} of {total}'}}", Code::layout_pattern, "{page}, {pages}");
  refused("cautions: {hammer: {text: 'Mind {zone}.'}}", Code::layout_pattern, "zone");
  refused("words: {labels: {foot: 'page {page'}}", Code::layout_pattern);
}

TEST_CASE("a name that the base does not have is a slip") {
  refused("words: {labels: {fooot: x}}", Code::unknown_key, "labels.foot");
  refused("style: {measures: {block-gab: 3pt}}", Code::unknown_key, "block-gap");
  refused("polcy: {}", Code::unknown_key, "policy");
  refused("policy: {cheks: {}}", Code::unknown_key, "checks");
  refused("style: {text: {text: {inc: ink}}}", Code::unknown_key);
}

TEST_CASE("an added section says where it stands and what it says") {
  refused("sections: {extra: {title: Extra, starts-page: no, master: page, text: [Words.]}}",
          Code::missing_key, "after");
  refused("sections: {extra: {title: Extra, starts-page: no, master: page, after: safety}}",
          Code::missing_key, "text");
  refused("sections: {extra: {title: Extra, starts-page: no, master: page, after: saftey, text: [Words.]}}",
          Code::unknown_word, "safety");
  refused("sections: {extra: {title: Extra, starts-page: no, master: sheet, after: safety, text: [Words.]}}",
          Code::unknown_word, "page");
}

TEST_CASE("how photographs are printed is the house's choice, within what can be printed") {
  const auto house = accepted("style: {photographs: {per-inch: 300}}");
  CHECK(house.style.photographs.per_inch == 300);
  CHECK(house.style.photographs.quality == accepted("").style.photographs.quality);
  refused("style: {photographs: {per-inch: 71}}", Code::out_of_range, "71 is not from 72 to 1200");
  refused("style: {photographs: {jpeg-quality: 101}}", Code::out_of_range, "101 is not from 1 to 100");
  refused("style: {photographs: {wide-from: 1}}", Code::out_of_range, "1 is not from 2 to 100");
}

TEST_CASE("a house says whether what a report was made from is attached to it or lies beside it") {
  CHECK_FALSE(accepted("policy: {opinion: {least-marks: 5}}").issue.inputs_beside);
  CHECK(accepted("issue: {inputs: beside}").issue.inputs_beside);
  refused("issue: {inputs: nowhere}", Code::unknown_word, "beside");
  refused("issue: {inputs: ~}", Code::layout_loosens);
  refused("issue: {input: beside}", Code::unknown_key, "inputs");
}
