#include <catch2/catch.hpp>

#include "helpers.h"
#include "support/survey_builder.h"

// Surveys of other years: what the chapter, a decision page and page one say of them.

using namespace strakebook;
using sample::contains;
using sample::mm;
using sample::station;
using sample::words;

namespace {

std::string section(const sample::Composed &sample, const std::string &id) {
  return sample::section_text(compose::compose(sample.source()), id);
}

/// The small survey beside one of 2021 that counts frames of 500 mm forward from 18.10 m: its frame 26 is station 5.1 here.
sample::Composed five_years_on() {
  auto sample = sample::small_survey();
  survey::EarlierSurvey then{.id = "V21", .inspected = {{2021, 10, 14}, {}}, .number = words("B 88"), .source = words("document, report B 88"),
                             .gauge = words("another gauge"), .u = sample::length("0.15"), .depth_u = sample::length("0.2")};
  then.datum = {.from = words("after end of the counter"), .counts = survey::Counts::forward, .zero = station("18.10 m"),
                .zero_within = mm("50 mm"), .stations_in = survey::StationsIn::frames, .frame_spacing = mm("500 mm")};
  for (const auto &[frame, figure] : {std::pair{34, "6.2"}, {32, "5.6"}, {30, "5.9"}, {35, "5.9"}}) {
    const base::Measured at{.value = sample::length("500") * frame, .raw = std::to_string(frame)};
    then.marks.push_back({.row = "PW", .station = at, .repeats = {mm(figure)}});
  }
  then.pits.push_back({.id = "P7", .at = {.row = "PW", .station = {.value = sample::length("14650"), .raw = "29.3"}},
                       .adjacent = mm("5.8"), .depth = mm("0.4")});
  sample.survey.earlier = {then};
  assess_again(sample);
  return sample;
}

} // namespace

TEST_CASE("without an earlier survey the chapter holds the surveyor's words and nothing else") {
  const auto text = section(sample::small_survey(), "comparison");
  CHECK(contains(text, "No previous survey is known."));
  CHECK_FALSE(contains(text, "survey compared"));
}

TEST_CASE("an earlier survey stands with its day, its gauge and how its zero lies here") {
  const auto text = section(five_years_on(), "comparison");
  INFO(text);
  CHECK(contains(text, "after end of the counter, counted forward, in frames 500 mm apart. It lies at 18.10 m of this survey's datum, within 50 mm."));
  CHECK(contains(text, "14 October 2021\n5.00\n"));
  CHECK(contains(text, "another gauge; u 0.15 mm, of a pit's depth 0.2 mm"));
  CHECK(contains(text, "4 of 5"));
}

TEST_CASE("a place stands with what it was called, where that lies, and its figures then and now") {
  const auto text = section(five_years_on(), "comparison");
  INFO(text);
  CHECK(contains(text, "P1\nP7\n3.45\n+50\n5.4\n4.4\n−1.00\n0.200\n")); // frame 29.3: 18.10 - 14.65
  CHECK(contains(text, "V21, 1: PW 35")); // frame 35 is at 0.60 and has no mark here
}

TEST_CASE("growth beyond the doubt is told as what it is, and is in no mean") {
  auto sample = five_years_on();
  sample.survey.earlier.front().marks.at(1).repeats = {mm("5.2")};
  assess_again(sample);
  const auto text = section(sample, "comparison");
  INFO(text);
  CHECK(contains(text, "(5.2 in V21, "));
  CHECK(contains(text, "Corrosion does not explain that"));
}

TEST_CASE("the rate criterion is a line of the zone's criteria, and no line where no earlier survey is known") {
  const auto text = section(five_years_on(), "assessment");
  INFO(text);
  CHECK(contains(text, "4.0 mm remaining, until 14 October 2028"));
  CHECK(contains(text, "P1 lost 0.200 mm a year, "));
  CHECK_FALSE(contains(section(sample::small_survey(), "assessment"), "until 14"));
}

TEST_CASE("page one says that a limit is reached before the next survey, and is silent where none is") {
  auto sample = five_years_on(); // P1 leaves 4.4 and loses 0.2 a year: 4.0 is reached in two years
  CHECK_FALSE(contains(section(sample, "answer"), "reached before then"));
  sample.survey.answer.next_survey_by->value = {2029, 10, 14};
  assess_again(sample);
  const auto text = section(sample, "answer");
  INFO(text);
  CHECK(contains(text, "the limit is reached before then in wind-and-water (P1, 4.0 mm remaining)."));
}
