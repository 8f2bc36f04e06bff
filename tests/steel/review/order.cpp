#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"
#include "strakebook/steel/review/findings.h"

using namespace strakebook;
using base::Code;
using base::Severity;
using sample::only;
using sample::reviewed;
using sample::says;
using sample::words;

namespace {

survey::Given<base::Date> day(int year, int month, int of_month) {
  return base::Located<base::Date>{{year, month, of_month}, sample::at_line(70)};
}

int count(const std::string &text) {
  return static_cast<int>(review::sentences(text, sample::house().prose.abbreviations).size());
}

/// The one warning, and the refusal of a final that does not answer it.
base::Diagnostic warned(const survey::Survey &survey, Code code) {
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 2);
  CHECK(found[0].code == code);
  CHECK(found[0].severity == Severity::warning);
  CHECK(found[1].code == Code::warning_unacknowledged);
  auto answered = survey;
  answered.acknowledgements = {{.subject = found[0].subject, .reason = words("It is so.")}};
  CHECK(reviewed(answered).size() == 1);
  return found[0];
}

} // namespace

TEST_CASE("inspected, signed, issued: no day before the one it follows") {
  auto survey = sample::complete_final(); // 14, 20, 20 October
  survey.surveyor.signed_on = survey.report.issued = survey.report.inspected;
  CHECK(reviewed(survey).empty());
  survey = sample::complete_final();
  SECTION("signed before the inspection") {
    survey.surveyor.signed_on = day(2026, 10, 13);
    const auto found = only(reviewed(survey), Code::dates_disagree);
    CHECK(says(found, "the signature, 2026-10-13, lies before the inspection, 2026-10-14"));
    CHECK(found.span.line == 70);
  }
  SECTION("issued before it was signed") {
    survey.report.issued = day(2026, 10, 19);
    CHECK(says(only(reviewed(survey), Code::dates_disagree), "the issue, 2026-10-19, lies before the signature, 2026-10-20"));
  }
  SECTION("next survey on the day of this one") {
    survey.answer.next_survey_by = day(2026, 10, 14);
    CHECK(says(only(reviewed(survey), Code::dates_disagree), "is not after the inspection"));
    survey.answer.next_survey_by = day(2026, 10, 15);
    CHECK(reviewed(survey).empty());
  }
}

TEST_CASE("an issue after the first says what it replaces") {
  auto survey = sample::complete_final();
  survey.report.issue = 2;
  const auto asked = [&] {
    auto found = reviewed(survey);
    CHECK(std::erase_if(found, [](const base::Diagnostic &one) { return one.code == Code::before_unknown; }) == 1);
    return found;
  };
  CHECK(says(only(asked(), Code::required_missing), "report.supersedes is missing: this is issue 2"));
  survey.report.supersedes = words("none");
  only(asked(), Code::required_missing);
  survey.report.supersedes = words("issue 1");
  CHECK(asked().empty());
}

TEST_CASE("the issue record ascends, in issues and in days") {
  auto survey = sample::complete_final();
  survey.issue_record = {{.issue = 1, .on = day(2026, 10, 16)}, {.issue = 2, .on = day(2026, 10, 16), .span = sample::at_line(81)}};
  CHECK(reviewed(survey).empty());
  SECTION("twice the same issue") {
    survey.issue_record[1].issue = 1;
    const auto found = only(reviewed(survey), Code::dates_disagree);
    CHECK(says(found, "lists issue 1 after issue 1"));
    CHECK(found.span.line == 81);
  }
  SECTION("an earlier day") {
    survey.issue_record[1].on = day(2026, 10, 15);
    CHECK(says(only(reviewed(survey), Code::dates_disagree), "the day of issue 2, 2026-10-15, lies before"));
  }
}

TEST_CASE("a place beyond the vessel's length is a warning, one for each row") {
  auto survey = sample::complete_final(); // 18.0 m
  survey.pits[0].at.station = sample::station("18.0");
  CHECK(reviewed(survey).empty());
  SECTION("marks") {
    for (const char *at : {"18.1", "19"})
      survey.marks.push_back({.row = "BC", .station = sample::station(at), .status = survey::Status::no_echo, .gauge = "ut"});
    const auto found = warned(survey, Code::station_beyond);
    CHECK(says(found, "row BC lies at station 18.1, and the vessel is 18.0 m long"));
    CHECK(found.subject == "beyond-length row BC");
  }
  SECTION("a pit") {
    survey.pits[0].at.station = sample::station("18.001");
    CHECK(warned(survey, Code::station_beyond).subject == "beyond-length P1");
  }
  SECTION("a reach") {
    survey.limitations[0].at = {.rows = {"BC"}, .from = sample::station("17"), .to = sample::station("20")};
    CHECK(warned(survey, Code::station_beyond).subject == "beyond-length limitation 1");
  }
}

TEST_CASE("none found where one is recorded is a warning for each") {
  auto survey = sample::complete_final();
  const auto none = [](const char *what, survey::Reach at) { return survey::NoneFound{.what = words(what), .at = std::move(at)}; };
  SECTION("clear of them") {
    survey.none_found = {none("cracks", {}), none("Pits", {.rows = {"BC"}, .from = sample::station("3"), .to = sample::station("4")}),
                         none("doublers", {}), none("spitting", {})};
    CHECK(reviewed(survey).empty());
  }
  SECTION("a pit") {
    survey.pits.resize(1);
    survey.decisions[0].conflict->marks = {"P1"};
    survey.none_found = {none("Pits, by eye", {.zone = "B"})};
    const auto found = warned(survey, Code::none_found_denied);
    CHECK(says(found, "\"Pits, by eye\" are said not to be found, but P1 is recorded at BC 1.4"));
    CHECK(found.subject == "none-found P1");
    survey.none_found = {none("pits other than P1", {.zone = "B"})};
    CHECK(reviewed(survey).empty());
  }
  SECTION("pits in blocks that were looked over whole") {
    survey::PitBlocks blocks{.block_m2 = sample::decimal("0.25"), .blocks = 2};
    for (const char *depth : {"0", "0.3"}) blocks.deepest.push_back(sample::mm(depth));
    survey.zones[0].pit_blocks = blocks;
    survey.none_found = {none("pits other than P1 and P2", {.zone = "B"})};
    CHECK(warned(survey, Code::none_found_denied).subject == "none-found zone B");
    survey.none_found = {none("pits other than P1, P2 and those in blocks of zone B", {.zone = "B"})};
    CHECK(reviewed(survey).empty());
    survey.none_found = {none("pits other than P1 and P2", {.zone = "B"})};
    survey.zones[0].pit_blocks->deepest = {sample::mm("0")};
    CHECK(reviewed(survey).empty());
  }
  SECTION("a doubler") {
    survey.doublers = {{.id = "D1", .over = {.rows = {"BC"}, .from = sample::station("9"), .to = sample::station("9.5")}}};
    survey.none_found = {none("doublers", {})};
    CHECK(warned(survey, Code::none_found_denied).subject == "none-found D1");
    survey.none_found = {none("doublers other than D1", {})};
    CHECK(reviewed(survey).empty());
  }
}

TEST_CASE("sentences are counted as a reader would") {
  CHECK(count("") == 0);
  CHECK(count("One.") == 1);
  CHECK(count("No stop at the end") == 1);
  CHECK(count("P1 keeps 7.9 mm. The limit is 4.0. It is met.") == 3);
  CHECK(count("It keeps approx. 4.0 mm, e.g. at PW 9. No. 3 is sound.") == 2);
  CHECK(count("A. Surveyor looked at St. Mary's wharf. 12 mm is left.") == 2);
  CHECK(count("Is it sound? Yes! (It is.) \"So be it.\" And so on ...") == 5);
  CHECK(count("It is met.\nNothing was found.\n") == 2);
  CHECK(count("See i.e. this.And this has no blank.") == 1);
}

TEST_CASE("the reason on page one has the sentences that the house asks for") {
  auto survey = sample::complete_final();
  const auto reason = [&](const char *text) { survey.answer.reason = {.text = text, .span = sample::at_line(90)}; };
  reason("One.");
  const auto found = only(reviewed(survey), Code::reason_length);
  CHECK(says(found, "has 1 sentence"));
  CHECK(found.expected == "2 to 4 sentences, each with its full stop");
  CHECK(found.span.line == 90);
  reason("One. Two. Three. Four. Five.");
  CHECK(says(only(reviewed(survey), Code::reason_length), "has 5 sentences"));
  for (const char *right : {"One. Two.", "One. Two. Three. Four."}) {
    reason(right);
    CHECK(reviewed(survey).empty());
  }
}
