#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"
#include "strakebook/steel/amend/decides.h"

using namespace strakebook;
using base::Code;
using sample::mm;
using sample::only;
using sample::says;
using sample::words;

namespace {

/// The complete final as its second issue, in which nothing but a reading has changed, and everything has its reason.
survey::Survey issue_two() {
  auto made = sample::complete_final();
  made.report.issue = 2;
  made.report.supersedes = words("issue 1");
  made.report.issued = base::Located<base::Date>{{2026, 11, 9}};
  made.marks[1].repeats = {mm("10.5")};
  made.marks[1].span = sample::at_line(90);
  survey::Amendment amendment{.cause = words("Figures were typed from the notebook."), .found_by = words("the underwriter"),
                              .found_on = base::Located<base::Date>{{2026, 11, 4}}, .checked = words("All readings were compared."),
                              .span = sample::at_line(80)};
  amendment.changes = {{.what = {words("BC 2")}, .why = words("Digits exchanged in typing.")}};
  amendment.told = {{.who = words("the buyer"), .how = words("by letter")}};
  made.amendment = std::move(amendment);
  return made;
}

amend::Changes since_issue_one(const survey::Survey &after) {
  const auto house = sample::house();
  base::Diagnostics nothing;
  const auto before = sample::complete_final();
  const auto was = assess::assess(before, house, nothing), is = assess::assess(after, house, nothing);
  const outlook::Outlook none;
  const std::vector<base::InputFile> no_files;
  return amend::compare({before, was, none, house, no_files}, {after, is, none, house, no_files});
}

/// Reviewed as the issue that replaces issue 1, which the buyer had.
std::vector<base::Diagnostic> reviewed(const survey::Survey &survey) {
  const auto house = sample::house();
  base::Diagnostics sink;
  const amend::Amended amended{.replaces = {.issue = 1, .recipients = {{.who = words("the buyer"), .how = words("by letter")}}},
                               .changes = since_issue_one(survey)};
  const auto assessment = assess::assess(survey, house, sink);
  review::review(survey, assessment, outlook::outlook(survey, assessment, house), house, sink, &amended);
  return sink.all();
}

} // namespace

TEST_CASE("a corrected issue with a reason for what changed lacks nothing") { CHECK(reviewed(issue_two()).empty()); }

TEST_CASE("a change without a reason is refused where it stands, with what to write") {
  auto survey = issue_two();
  survey.amendment->changes.clear();
  const auto found = only(reviewed(survey), Code::change_unreasoned);
  CHECK(found.severity == base::Severity::error);
  CHECK(found.message == "BC 2 is not as in issue 1, and nothing says why: reading 11.5, now 10.5");
  CHECK(found.write == "amendment:\n  changes:\n    - {what: BC 2, why: the reason in a sentence}");
  CHECK(found.span.line == 90);
}

TEST_CASE("every change is listed by itself, in whatever way it came") {
  auto survey = issue_two();
  survey.marks.pop_back();
  survey.notes = {{.id = "N1", .at = {.rows = {"BC"}}, .text = words("rust")}};
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 2);
  CHECK(says(found[0], "BC 4 was in issue 1 and is withdrawn"));
  CHECK(says(found[1], "N1 was not in issue 1"));
  for (const auto &one : found) CHECK(one.code == Code::change_unreasoned);
}

TEST_CASE("a draft is told the same, and goes out") {
  auto survey = issue_two();
  survey.report.state = survey::State::draft;
  survey.amendment->changes.clear();
  const auto found = reviewed(survey);
  REQUIRE_FALSE(found.empty());
  CHECK(found[0].code == Code::change_unreasoned);
  CHECK(found[0].severity == base::Severity::warning);
  CHECK(found[0].subject.empty());
}

TEST_CASE("a reason for what did not change is refused, and the nearest name is offered") {
  auto survey = issue_two();
  survey.amendment->changes.push_back({.what = {words("BC 9")}, .why = words("Nothing changed there.")});
  const auto found = only(reviewed(survey), Code::reason_for_nothing);
  CHECK(says(found, "\"BC 9\" is given a reason, and is as in issue 1"));
  CHECK(found.expected == "one of: BC 2");
  CHECK(found.write == "BC 2");
}

TEST_CASE("two reasons for one change are one too many") {
  auto survey = issue_two();
  survey.amendment->changes.push_back({.what = {words("BC  2")}, .why = words("Another reason.")});
  CHECK(says(only(reviewed(survey), Code::reason_for_nothing), "is given a reason twice"));
}

TEST_CASE("a decision that stands though a verdict moved needs its reason, and only then may have one") {
  auto survey = issue_two();
  survey.marks[1].repeats = {mm("3.9")}; // under the 4.0 that its decision names
  const auto standing = [&] {
    std::vector<base::Diagnostic> found;
    for (const auto &one : reviewed(survey))
      if (one.code == Code::stands_unreasoned || one.code == Code::reason_for_nothing) found.push_back(one);
    return found;
  };
  const auto found = only(standing(), Code::stands_unreasoned);
  CHECK(says(found, "the decision on zone B is as in issue 1, though what it rests on is not: "));
  CHECK(says(found, "absolute-4.0 was \"meets\" and is \"too-close\""));
  CHECK(found.span.line == 50);
  survey.amendment->stands = {{.what = {words("B")}, .why = words("The mark stands alone.")}};
  CHECK(standing().empty());
  survey.marks[1].repeats = {mm("10.5")};
  CHECK(says(only(standing(), Code::reason_for_nothing), "\"B\" is said to stand"));
}

TEST_CASE("what went wrong, who noticed, when, and what else was looked at: each is asked for") {
  auto survey = issue_two();
  std::string key;
  SECTION("cause") { survey.amendment->cause = {}, key = "cause"; }
  SECTION("found by") { survey.amendment->found_by = {}, key = "found-by"; }
  SECTION("found on") { survey.amendment->found_on.reset(), key = "found-on"; }
  SECTION("checked") { survey.amendment->checked = {}, key = "checked"; }
  const auto found = only(reviewed(survey), Code::amendment_incomplete);
  CHECK(says(found, "amendment." + key + " is missing: this issue replaces issue 1"));
  CHECK(found.span.line == 80);
}

TEST_CASE("a sign or one word is no reason") {
  auto survey = issue_two();
  for (const char *said : {".", "Typing", "- 1 2"}) {
    survey.amendment->changes[0].why = words(said);
    CHECK(only(reviewed(survey), Code::change_unreasoned).span.line == 90);
  }
}

TEST_CASE("a correction comes after what it corrects, and is told before it is answered") {
  auto survey = issue_two();
  const auto day = [](int month, int number) { return base::Located<base::Date>{{2026, month, number}}; };
  auto &told = survey.amendment->told[0];
  std::string said;
  SECTION("found after the issue") { survey.amendment->found_on = day(11, 10), said = "the day of issue, 2026-11-09, lies before the day the fault was found"; }
  SECTION("told after the issue") { told.on = day(11, 10), said = "the day of issue, 2026-11-09, lies before the day the buyer was told"; }
  SECTION("answered before it was told") { told.on = day(11, 5), told.acknowledged = day(11, 4), said = "the answer of the buyer, 2026-11-04, lies before the day the buyer was told"; }
  CHECK(says(only(reviewed(survey), Code::dates_disagree), said));
}

TEST_CASE("a decision in other words is the same decision") {
  amend::Change change{.kind = amend::Kind::decision, .how = amend::How::changed, .subject = "decision B", .differences = {{"claim", "Sound.", "Sound, all of it."}}};
  CHECK_FALSE(amend::decides(change));
  change.differences.push_back({"action", "monitor", "insert"});
  CHECK(amend::decides(change));
  CHECK(amend::decides({.kind = amend::Kind::recommendation, .how = amend::How::withdrawn, .subject = "item 1"}));
  CHECK_FALSE(amend::decides({.kind = amend::Kind::reading, .how = amend::How::changed, .subject = "BC 2", .differences = {{"reading", "1", "2"}}}));
}

TEST_CASE("who had the issue that is replaced has to be told") {
  auto survey = issue_two();
  survey.amendment->told[0].who = words("the seller");
  CHECK(says(only(reviewed(survey), Code::amendment_incomplete), "the buyer had issue 1, and nothing says that they were told"));
}

TEST_CASE("without any amendment everything is asked for at once") {
  auto survey = issue_two();
  survey.amendment.reset();
  const auto found = reviewed(survey);
  CHECK(std::ranges::count(found, Code::change_unreasoned, &base::Diagnostic::code) == 1);
  CHECK(std::ranges::count(found, Code::amendment_incomplete, &base::Diagnostic::code) == 5);
  CHECK(found.size() == 6);
}

TEST_CASE("an issue whose predecessor is not known is told so, and goes out all the same") {
  auto survey = sample::complete_final();
  survey.report.issue = 2;
  survey.report.supersedes = words("issue 1");
  const auto found = only(sample::reviewed(survey), Code::before_unknown);
  CHECK(found.severity == base::Severity::warning);
  CHECK(found.subject.empty());
  CHECK(says(found, "issue 2 replaces one that the register does not have"));
}

TEST_CASE("the first issue replaces nothing, so it has no amendment") {
  auto survey = sample::complete_final();
  survey.amendment = survey::Amendment{.cause = words("Nothing."), .span = sample::at_line(80)};
  const auto found = only(sample::reviewed(survey), Code::reason_for_nothing);
  CHECK(says(found, "the first issue replaces nothing"));
  CHECK(found.span.line == 80);
}
