#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using base::Severity;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;
using Texts = std::vector<std::string>;

namespace {

survey::Survey with_fact(const std::string &text, survey::StatementKind kind = survey::StatementKind::measured) {
  auto survey = sample::complete_final();
  survey.decisions[0].facts = {{.kind = kind, .text = {.text = text, .span = sample::at_line(52)}}};
  survey.photos = {{.id = "1"}};
  survey.notes = {{.id = "N1"}};
  survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}, .from = sample::station("9"), .to = sample::station("9")}}};
  return survey;
}

/// A final warns of what a measured statement misquotes, and refuses it until it is answered.
Texts warned(const std::string &text) {
  Texts subjects;
  for (const auto &one : reviewed(with_fact(text)))
    if (one.code == Code::figure_misquoted) subjects.push_back(one.subject);
  return subjects;
}

} // namespace

TEST_CASE("a measured statement says where: at a mark, a pit, a photo, a note or a doubler") {
  const auto found = only(reviewed(with_fact("The plate keeps more than 11 mm.")), Code::claim_uncited);
  CHECK(says(found, "\"The plate keeps more than 11 mm.\" is called measured"));
  CHECK(found.severity == Severity::error);
  CHECK(found.span.line == 52);
  for (const char *cited : {"BC 1 keeps it.", "P1 is deep.", "See photo 1.", "As N1 says.", "D1 is 4 mm."}) {
    INFO(cited);
    CHECK(reviewed(with_fact(cited)).empty());
  }
  only(reviewed(with_fact("Zone B and limitation 1 say so.")), Code::claim_uncited);
  only(reviewed(with_fact("P9 and BC 99 say so.")), Code::claim_uncited); // nothing is there
  CHECK(reviewed(with_fact("The plate keeps enough.", survey::StatementKind::opinion)).empty());
}

TEST_CASE("the evidence of an adverse claim names something measured or seen") {
  auto survey = sample::complete_final();
  auto &decision = survey.decisions[0];
  decision.action = "insert";
  decision.departure = words("the owner wants it so");
  decision.instead_of = {{.name = "monitor", .words = words("the pits are too deep")}};
  decision.evidence = {"limitation 1"};
  CHECK(says(only(reviewed(survey), Code::claim_uncited), "zone B: the evidence of \"insert\""));
  decision.evidence.push_back("P2");
  CHECK(reviewed(survey).empty());

  survey.recommendations = {{.id = "1", .action = "insert", .at = {.zone = "B"}, .klass = "B", .deadline = words("in spring"),
                             .reason = words("thin"), .alternative = words("a weld"), .feasible = words("yes"),
                             .proof = words("photographs"), .evidence = {"zone B"}}};
  CHECK(says(only(reviewed(survey), Code::claim_uncited), "recommendation 1"));
}

TEST_CASE("a figure that the cited place does not have is a warning, answered by name or refused") {
  // BC 2 reads 11.5
  auto survey = with_fact("BC 2 reads 15.1 mm.");
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 2);
  CHECK(found[0].code == Code::figure_misquoted);
  CHECK(found[0].severity == Severity::warning);
  CHECK(says(found[0], "gives 15.1 for BC 2, where the figures noted are 11.5"));
  CHECK(found[0].span.line == 52);
  CHECK(found[1].code == Code::warning_unacknowledged);
  survey.acknowledgements = {{.subject = "figure-of BC 2", .reason = words("A slip of an earlier issue is quoted.")}};
  CHECK(reviewed(survey).size() == 1);
}

TEST_CASE("figures beside a place are held against it, each against its own in a list") {
  CHECK(warned("BC 2 reads 5.4.") == Texts{"figure-of BC 2"});
  CHECK(warned("The lowest is 11.9 mm, at BC 2.") == Texts{"figure-of BC 2"});
  CHECK(warned("BC 1, BC 2 and BC 3 read 11.4, 11.5 and 11.7 mm.") == Texts{"figure-of BC 3"});
  CHECK(warned("P2 is 3.4 mm deep.") == Texts{"figure-of P2"});
  CHECK(warned("BC 2 reads 9.6 mm.") == Texts{"figure-of BC 2"}); // the 20 % limit excuses nothing
  CHECK(warned("P2 leaves 7.9 mm. BC 4 reads 12.4.") == Texts{"figure-of BC 4"});
}

TEST_CASE("what is noted, or follows from it, is no false alarm") {
  for (const char *right : {
           "BC 1, BC 2 and BC 3 read 11.4, 11.5 and 11.6 mm.", "The lowest of 4 marks is 11.4 mm, at BC 1.",
           "P2 is 3.5 mm deep beside 11.4 mm and leaves 7.9 mm.", "BC 2 reads 11.50.", "P2 keeps 3.9 mm above 4.0.", // in hand
           "BC 2 has lost 0.5 mm of 12.0.", "BC 2 keeps more than 9.5 mm.", "The plate keeps 9.5 mm or more (BC 2).", // bounds
           "BC 2 lies 1.5 m from the stem.", "At BC 2 it is 4.2 % down.", "BC 2, seen on 2026-10-14 in frame 3.",
           "Between BC 1 and BC 2 and the frame behind the old bulkhead stand 9.9 mm.", "BC 2 is sound; 9.9 mm is another's.",
           "P1-P2 leave 7.9 and 8.3 mm.", "BC 2 and BC 3 read 11.6 mm at most."}) {
    INFO(right);
    CHECK(warned(right).empty());
  }
}

TEST_CASE("a reading from inside is a figure of the mark it was taken behind, and a pit in an outer plate has no margin") {
  auto survey = with_fact("From inside, BC 2 gave 3.4 mm.");
  CHECK(reviewed(survey).size() == 2);
  survey.doublers[0].over = {.rows = {"BC"}, .from = sample::station("2"), .to = sample::station("2")};
  survey.doublers[0].from_inside =
      survey::InnerReading{.reading = sample::mm("3.4"), .at = {.row = "BC", .station = sample::station("2")}, .gauge = "ut"};
  CHECK(reviewed(survey).empty());

  survey = with_fact("P2 leaves 7.9 mm.");
  survey.doublers[0].over = {.rows = {"BC"}, .from = survey.pits[1].at.station, .to = survey.pits[1].at.station};
  survey.decisions[0].conflict->marks = {"P1"};
  CHECK(reviewed(survey).empty());
  survey.decisions[0].facts[0].text.text = "P2 keeps 3.9 mm above 4.0."; // in hand, if it were the hull's
  CHECK(reviewed(survey).at(0).subject == "figure-of P2");
}

TEST_CASE("a mark that was not read has no figure to quote") {
  auto survey = with_fact("BC 5 reads 11.2 mm.");
  survey.marks.push_back({.row = "BC", .station = sample::station("5"), .status = survey::Status::no_echo, .gauge = "ut"});
  CHECK(says(reviewed(survey).at(0), "for BC 5, where no figure was noted"));
}

TEST_CASE("an adverse decision, or a limit too close to call, needs the other view and what would change it") {
  auto survey = sample::complete_final();
  auto &decision = survey.decisions[0];
  decision.range_of_opinion = decision.would_change = {};
  CHECK(reviewed(survey).empty()); // not adverse, and no limit is near
  SECTION("too close") {
    survey.pits[1].depth = sample::mm("3.0"); // 8.4 is left at P2, at the 30 % limit; P1 then leaves the least, 8.3
    CHECK(says(only(reviewed(survey), Code::decision_incomplete),
               "zone B: a limit is too close to call at P1, and the decision lacks others-may-say and would-change"));
  }
  SECTION("adverse") {
    decision.action = "insert";
    decision.departure = words("the owner wants it so");
    decision.evidence = {"P2"};
    decision.instead_of = {{.name = "monitor", .words = words("the pits are too deep")}};
    CHECK(says(only(reviewed(survey), Code::decision_incomplete), "\"insert\" is adverse"));
  }
  decision.range_of_opinion = words("Some would wait.");
  CHECK(says(only(reviewed(survey), Code::decision_incomplete), "lacks would-change"));
  decision.would_change = words("A deeper pit.");
  survey.decisions[0].conflict->marks = {"P1"};
  CHECK(reviewed(survey).empty());
}

TEST_CASE("a conflict answered where there is none is reported") {
  auto survey = sample::complete_final();
  survey.zones[0].original.basis = "owner's word"; // no percent criterion applies, so none contradicts
  const auto found = only(reviewed(survey), Code::answer_to_nothing);
  CHECK(found.span.line == 51);
  survey.decisions[0].conflict.reset();
  CHECK(reviewed(survey).empty());
}
