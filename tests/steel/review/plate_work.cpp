#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

// Usual figures of plate work (4 mm, lap 25 to 50, radius 50, plugs at 300 over 350, edges of 300 and 150): common practice, no
// source. No doubler on a round bilge, the parent plate sound under its lap: common practice, no source.
using namespace strakebook;
using base::Code;
using sample::mm;
using sample::only;
using sample::reviewed;
using sample::says;

namespace {

/// The complete final with one sound plate in its schedule.
survey::Survey with_plate(const std::string &action) {
  auto survey = sample::complete_final();
  survey.steelwork = {sample::sound_plate(action)};
  survey.steelwork[0].at = {.rows = {"BC"}, .from = sample::station("2"), .to = sample::station("3"), .span = sample::at_line(60)};
  return survey;
}

/// In a final a warning that nobody answers for is told twice: by itself, and as what keeps the report back.
base::Diagnostic warned(const survey::Survey &survey, Code code) {
  const auto found = reviewed(survey);
  REQUIRE(found.size() == 2);
  CHECK(found[0].code == code);
  CHECK(found[0].severity == base::Severity::warning);
  CHECK(found[1].code == Code::warning_unacknowledged);
  auto answered = survey;
  answered.acknowledgements.push_back({.subject = found[0].subject, .reason = sample::words("It stands for this reason.")});
  CHECK(reviewed(answered).size() == 1);
  return found[0];
}

} // namespace

TEST_CASE("plate work: a plate with all that is asked of it is passed") {
  for (const char *action : {"overplate", "insert", "pad weld"}) CHECK(reviewed(with_plate(action)).empty());
}

TEST_CASE("plate work: lining on hot work") {
  auto survey = with_plate("overplate");
  survey.steelwork[0].lining = {};
  CHECK(warned(survey, Code::lining_not_cleared).subject == "lining S1");
  SECTION("build-up is hot work too") { survey.steelwork[0].action = "weld build-up"; CHECK(warned(survey, Code::lining_not_cleared).code == Code::lining_not_cleared); }
  SECTION("coating is not") { survey.steelwork[0].action = "clean and recoat"; CHECK(reviewed(survey).empty()); }
  SECTION("unless it is welded") {
    survey.steelwork[0].action = "clean and recoat";
    survey.steelwork[0].weld = sample::words("fillet");
    warned(survey, Code::lining_not_cleared);
  }
}

TEST_CASE("plate work: a plate without its figures cannot be weighed") {
  auto survey = with_plate("overplate");
  survey.steelwork[0].thickness.reset();
  CHECK(says(warned(survey, Code::plate_unmeasured), "no thickness"));
  survey.steelwork[0].length.reset();
  CHECK(says(warned(survey, Code::plate_unmeasured), "no length and thickness"));
}

TEST_CASE("plate work: the least sizes, to the nanometre") {
  const auto [action, least] = GENERATE(table<std::string, std::string>({{"overplate", "300"}, {"insert", "300"}, {"pad weld", "150"}}));
  auto survey = with_plate(action);
  survey.steelwork[0].breadth = mm(least);
  CHECK(reviewed(survey).empty());
  survey.steelwork[0].breadth->value = survey.steelwork[0].breadth->value - base::Length::nanometres(1);
  survey.steelwork[0].radius = mm("50");
  CHECK(warned(survey, Code::plate_too_small).subject == "plate-size S1");
}

TEST_CASE("plate work: corners that are square, sharp, or too round for the plate") {
  auto survey = with_plate("insert");
  survey.steelwork[0].radius = mm("50 mm");
  CHECK(reviewed(survey).empty());
  SECTION("sharp") { survey.steelwork[0].radius = mm("49 mm"); CHECK(says(warned(survey, Code::square_corners), "a radius of 49 mm")); }
  SECTION("square") { survey.steelwork[0].radius = mm("0 mm"); warned(survey, Code::square_corners); }
  SECTION("not given") { survey.steelwork[0].radius.reset(); CHECK(says(warned(survey, Code::square_corners), "no radius")); }
  SECTION("too round") { survey.steelwork[0].radius = mm("251 mm"); CHECK(says(warned(survey, Code::square_corners), "does not go into")); }
}

TEST_CASE("plate work: thin plate") {
  auto survey = with_plate("overplate");
  survey.steelwork[0].thickness = mm("4");
  CHECK(reviewed(survey).empty());
  survey.steelwork[0].thickness = mm("3.9");
  CHECK(warned(survey, Code::plate_too_thin).subject == "plate-thickness S1");
}

TEST_CASE("plate work: the lap of a doubler, and no other plate's") {
  auto survey = with_plate("overplate");
  for (const char *lap : {"25 mm", "50 mm"}) {
    survey.steelwork[0].lap_width = mm(lap);
    CHECK(reviewed(survey).empty());
  }
  for (const char *lap : {"24.9 mm", "50.1 mm"}) {
    survey.steelwork[0].lap_width = mm(lap);
    warned(survey, Code::lap_width);
  }
  survey.steelwork[0].lap_width.reset();
  CHECK(says(warned(survey, Code::lap_width), "not given"));
  survey.steelwork[0].action = "insert";
  CHECK(reviewed(survey).empty());
}

TEST_CASE("plate work: plugs of a broad doubler") {
  auto survey = with_plate("overplate");
  SECTION("too far apart") { survey.steelwork[0].plug_pitch = mm("301 mm"); CHECK(says(warned(survey, Code::plugs_missing), "301 mm apart")); }
  SECTION("none") { survey.steelwork[0].plug_pitch.reset(); CHECK(says(warned(survey, Code::plugs_missing), "not given")); }
  SECTION("none on a narrow one") {
    survey.steelwork[0].plug_pitch.reset();
    survey.steelwork[0].breadth = mm("350 mm");
    CHECK(reviewed(survey).empty());
  }
}

TEST_CASE("plate work: a doubler on a round bilge") {
  auto survey = with_plate("overplate");
  survey.zones[0].plating = policy::Plating::bilge;
  CHECK(says(warned(survey, Code::round_bilge), "not said"));
  survey.zones[0].bilge = sample::words("round");
  CHECK(says(warned(survey, Code::round_bilge), "over a round bilge"));
  SECTION("a hard chine takes one") { survey.zones[0].bilge = sample::words("hard chine"); CHECK(reviewed(survey).empty()); }
  SECTION("an insert is none") { survey.steelwork[0].action = "insert"; CHECK(reviewed(survey).empty()); }
}

TEST_CASE("plate work: the plate under a doubler") {
  auto survey = with_plate("overplate");
  survey.marks[1].repeats = {mm("3.9")}; // BC 2
  survey.recommendations = {};
  const auto found = reviewed(survey);
  const auto warning = std::ranges::find(found, Code::thin_under_lap, &base::Diagnostic::code);
  REQUIRE(warning != found.end());
  CHECK(says(*warning, "BC 2 (3.9)"));
  SECTION("where no mark lies under it, the nearest at either side") {
    survey.steelwork[0].at = {.rows = {"BC"}, .from = sample::station("2.4"), .to = sample::station("2.6"), .span = sample::at_line(60)};
    CHECK(std::ranges::count(reviewed(survey), Code::thin_under_lap, &base::Diagnostic::code) == 1);
  }
  SECTION("clear of it") {
    survey.steelwork[0].at.from = sample::station("3");
    CHECK(std::ranges::count(reviewed(survey), Code::thin_under_lap, &base::Diagnostic::code) == 0);
  }
  SECTION("an insert takes it out") {
    survey.steelwork[0].action = "insert";
    CHECK(std::ranges::count(reviewed(survey), Code::thin_under_lap, &base::Diagnostic::code) == 0);
  }
}

TEST_CASE("places that fall short are covered by a recommendation or a schedule item, or answered for") {
  auto survey = sample::complete_final();
  survey.marks[1].repeats = {mm("3.0")};
  const auto uncovered = [](const survey::Survey &one) {
    std::vector<std::string> out;
    for (const auto &found : reviewed(one))
      if (found.code == Code::area_uncovered) out.push_back(found.subject);
    return out;
  };
  CHECK(uncovered(survey) == std::vector<std::string>{"uncovered BC 2"});
  SECTION("by a schedule item") {
    survey.steelwork = {sample::sound_plate("insert")};
    survey.steelwork[0].at = {.rows = {"BC"}, .from = sample::station("1.5"), .to = sample::station("2.5")};
  }
  SECTION("by a recommendation") { survey.recommendations = {{.id = "1", .at = {.zone = "B"}}}; }
  SECTION("by nothing in a preliminary, which may recommend nothing") { survey.report.state = survey::State::preliminary; }
  SECTION("a decision is asked for first") { survey.decisions.clear(); }
  SECTION("they meet it") { survey.marks[1].repeats = {mm("5.0")}; }
  CHECK(uncovered(survey).empty());
}
