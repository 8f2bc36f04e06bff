#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using base::Severity;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;

TEST_CASE("a final that lacks nothing passes") { CHECK(reviewed(sample::complete_final()).empty()); }

TEST_CASE("what is missing is named by its path, at the nearest thing that is there") {
  auto survey = sample::complete_final();
  survey.datum.from = {};
  const auto found = only(reviewed(survey), Code::required_missing);
  CHECK(found.severity == Severity::error);
  CHECK(says(found, "datum.from is missing"));
  CHECK(found.span.line == 20);
  CHECK(found.write == "from: fore face of stem");
}

TEST_CASE("all that is missing is told in one run, in report order") {
  auto survey = sample::complete_final();
  survey.surveyor.declaration = {};
  survey.zones[0].preparation = {};
  survey.report.number = {};
  survey.limitations.clear();
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 4);
  CHECK(says(found[0], "report.number"));
  CHECK(says(found[1], "zone B: zones.preparation"));
  CHECK(says(found[2], "limitations is missing"));
  CHECK(says(found[3], "surveyor.declaration"));
}

TEST_CASE("the house may ask for more, by path") {
  auto policy = sample::house();
  policy.required_fields = {"datum.height", "datum.from"};
  CHECK(says(only(reviewed(sample::complete_final(), policy), Code::required_missing), "datum.height"));
  auto survey = sample::complete_final();
  survey.datum.height = words("underside of base plate");
  CHECK(reviewed(survey, policy).empty());
}

TEST_CASE("a path that no field has is not passed over") {
  auto policy = sample::house();
  policy.required_fields = {"datum.form"};
  CHECK(says(only(reviewed(sample::complete_final(), policy), Code::required_missing), "datum.form"));
  const auto known = review::known_required_fields();
  CHECK(std::find(known.begin(), known.end(), "datum.from") != known.end());
  CHECK(std::find(known.begin(), known.end(), "datum.form") == known.end());
}

TEST_CASE("refloat with conditions needs the conditions") {
  auto survey = sample::complete_final();
  survey.answer.refloat = words("with conditions");
  CHECK(says(only(reviewed(survey), Code::required_missing), "answer.refloat-conditions"));
  survey.answer.refloat_conditions = words("after the pits are filled");
  CHECK(reviewed(survey).empty());
}

TEST_CASE("every zone needs a decision") {
  auto survey = sample::complete_final();
  survey.decisions.clear();
  const auto found = reviewed(survey);
  CHECK(says(found.at(0), "zone B: decisions"));
  CHECK(found.at(0).span.line == 40);
  CHECK(found.at(1).code == Code::conflict_unanswered);
}

TEST_CASE("a row that the house requires: there with marks, or covered by a limitation") {
  auto policy = sample::house();
  policy.required_rows = {"bottom edge"};
  auto survey = sample::complete_final();
  CHECK(says(only(reviewed(survey, policy), Code::required_missing), "bottom edge"));

  SECTION("a row without marks is no row") {
    survey.rows.push_back({.id = "BE", .zone = "B", .name = words("bottom edge")});
    CHECK(reviewed(survey, policy).size() == 1);
    survey.marks.push_back({.row = "BE", .station = sample::station("1"), .status = survey::Status::no_access});
    CHECK(reviewed(survey, policy).empty());
  }
  SECTION("a limitation that names it covers it") {
    survey.limitations[0].area = words("bottom edge, on keel blocks 4 to 14 m");
    CHECK(reviewed(survey, policy).empty());
  }
}

TEST_CASE("a draft is told the same as warnings") {
  auto survey = sample::complete_final();
  survey.report.state = survey::State::draft;
  survey.report.number = {};
  survey.decisions[0].conflict.reset();
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 2);
  CHECK(found[0].code == Code::required_missing);
  CHECK(found[1].code == Code::conflict_unanswered);
  for (const auto &one : found) CHECK(one.severity == Severity::warning);
}

TEST_CASE("a preliminary carries no decisions and no recommendations, and is asked for no more") {
  auto survey = sample::complete_final();
  survey.report.state = survey::State::preliminary;
  survey.surveyor.declaration = {};
  CHECK(reviewed(survey).size() == 3); // decisions, advice, its reason
  survey.answer.refloat = survey.answer.reason = {};
  const auto found = only(reviewed(survey), Code::state_content);
  CHECK(found.severity == Severity::error);
  CHECK(found.span.line == 50);
  survey.decisions.clear();
  CHECK(reviewed(survey).empty());
  survey.recommendations.push_back({.id = "1"});
  CHECK(says(only(reviewed(survey), Code::state_content), "recommendations"));
}

TEST_CASE("a warning in a final is answered or refused; an answer to nothing is refused") {
  base::Diagnostics sink;
  sink.add({.severity = Severity::warning, .code = Code::neighbour_jump, .span = sample::at_line(77), .message = "far from its neighbours",
            .subject = "neighbour-jump BC 2"});
  auto survey = sample::complete_final();
  const auto found = only(reviewed(survey, sample::house(), sink), Code::warning_unacknowledged);
  CHECK(found.severity == Severity::error);
  CHECK(found.span.line == 77);
  CHECK(found.write.find("neighbour-jump BC 2") != std::string::npos);

  survey.acknowledgements = {{.subject = "neighbour-jump BC 2", .reason = words("read again, same figure")}};
  CHECK(reviewed(survey, sample::house(), sink).empty());
  only(reviewed(survey), Code::unknown_acknowledgement);
  survey.acknowledgements[0].reason = {};
  only(reviewed(survey, sample::house(), sink), Code::warning_unacknowledged);
}

TEST_CASE("a photograph needs its file or the reason for none") {
  auto policy = sample::house();
  policy.required_fields = {"photos.file"};
  auto survey = sample::complete_final();
  survey.photos = {{.id = "4", .span = sample::at_line(60)}};
  const auto found = only(reviewed(survey, policy), Code::required_missing);
  CHECK(says(found, "photo 4: photos.file is missing"));
  CHECK(found.span.line == 60);
  const auto reason = GENERATE(&survey::Photo::file, &survey::Photo::not_taken, &survey::Photo::withheld);
  survey.photos[0].*reason = words("photos/p4.jpg");
  CHECK(reviewed(survey, policy).empty());
}
