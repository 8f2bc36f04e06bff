#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;

TEST_CASE("a conflict without an answer is refused, with zone, place, what falls short, what is met, how to answer") {
  auto survey = sample::complete_final();
  survey.decisions[0].conflict.reset();
  const auto found = only(reviewed(survey), Code::conflict_unanswered);
  CHECK(found.message == "zone B: the criteria contradict each other at P2, 7.9 mm left: it falls short of 20 % of original, "
                         "25 % of original and 30 % of original and meets 4.0 mm remaining and 3.0 mm remaining, and no answer is given");
  CHECK(found.span.line == 50);
  CHECK(found.write.find("prefers: percent-20 | percent-25 | percent-30 | absolute-4.0 | absolute-3.0") != std::string::npos);
  CHECK(found.write.find("marks: [P2]") != std::string::npos);
}

TEST_CASE("an answer names a criterion in use, cites a mark that is there, and is a full sentence") {
  auto survey = sample::complete_final();
  auto &answer = *survey.decisions[0].conflict;
  SECTION("criterion not in use") { answer.prefers = "inland-rule"; }
  SECTION("no criterion") { answer.prefers.clear(); }
  SECTION("no mark") { answer.marks.clear(); }
  SECTION("no such mark") { answer.marks = {"BC 99"}; }
  SECTION("three words") { answer.because = words("They are old."); }
  SECTION("no full stop") { answer.because = words("The pits are few and old"); }
  const auto found = only(reviewed(survey), Code::answer_incomplete);
  CHECK(found.span.line == 51);
}

TEST_CASE("an answer may cite a mark, and end in a line end") {
  auto survey = sample::complete_final();
  survey.decisions[0].conflict->marks = {"BC 2", "P1"};
  survey.decisions[0].conflict->because = words("They are old now.\n");
  CHECK(reviewed(survey).empty());
}

TEST_CASE("everything that an answer lacks is told at once") {
  auto survey = sample::complete_final();
  survey.decisions[0].conflict = survey::ConflictAnswer{.prefers = "nonsense", .marks = {}, .because = words("so")};
  const auto found = only(reviewed(survey), Code::answer_incomplete);
  CHECK(says(found, "nonsense is not a criterion that this survey uses"));
  CHECK(says(found, "no mark is cited"));
  CHECK(says(found, "not a full sentence"));
}

TEST_CASE("an adverse decision needs criterion, reason, evidence and alternatives") {
  auto survey = sample::complete_final();
  auto &decision = survey.decisions[0];
  decision.action = "insert";
  decision.departure = words("the owner wants it so");
  const auto found = only(reviewed(survey), Code::decision_incomplete);
  CHECK(says(found, "\"insert\" lacks evidence and instead-of"));
  decision.evidence = {"P2"};
  decision.instead_of = {{.name = "monitor", .words = words("the pits are too deep")}};
  CHECK(reviewed(survey).empty());
  decision.criterion.clear();
  CHECK(says(only(reviewed(survey), Code::decision_incomplete), "lacks criterion"));
  decision.criterion = "inland-rule";
  decision.conflict->prefers = "inland-rule";
  const auto both = reviewed(survey);
  CHECK(std::any_of(both.begin(), both.end(), [](const auto &one) { return says(one, "inland-rule is none"); }));
}

TEST_CASE("a decision that is not adverse needs no alternatives, but a reason") {
  auto survey = sample::complete_final();
  CHECK(survey.decisions[0].instead_of.empty());
  CHECK(reviewed(survey).empty());
  survey.decisions[0].why = {};
  CHECK(says(only(reviewed(survey), Code::required_missing), "decisions.why"));
}

TEST_CASE("a criterion that does not apply to the zone cannot govern it") {
  auto survey = sample::complete_final();
  survey.zones[0].original.basis = "owner's word";
  survey.decisions[0].conflict.reset(); // no percent criterion, no conflict
  CHECK(reviewed(survey).empty());
  survey.decisions[0].criterion = "percent-25";
  CHECK(says(only(reviewed(survey), Code::decision_incomplete), "percent-25 does not"));
}

TEST_CASE("a departure from the ladder needs a reason") {
  auto survey = sample::complete_final();
  survey.decisions[0].action = "continue";
  const auto found = only(reviewed(survey), Code::departure_unreasoned);
  CHECK(found.expected.find("clean and recoat, monitor") != std::string::npos);
  survey.decisions[0].departure = words("the pits are filled already");
  CHECK(reviewed(survey).empty());
}

TEST_CASE("too few readings: no opinion, or a reason for one") {
  auto survey = sample::complete_final();
  survey.marks.resize(2);
  const auto found = only(reviewed(survey), Code::no_opinion_required);
  CHECK(says(found, "2 of 2 marks were read"));
  SECTION("no opinion") { survey.decisions[0].action = std::string(policy::no_opinion); }
  SECTION("reasoned") { survey.decisions[0].opinion_on_few = words("the plate was seen bright all over"); }
  CHECK(reviewed(survey).empty());
}
