#include "strakebook/steel/works/frames.h"

#include "steel/works/reckoned.h"

// Arithmetic, worked by hand.
using namespace strakebook;
using sample::length;

namespace {

survey::Survey framed(const std::string &zero, const std::string &run) {
  auto survey = sample::side().made; // spacing 0.5 m
  survey.datum.frame_zero = sample::station(zero);
  survey.datum.frames_run = sample::words(run);
  return survey;
}

works::NearestFrame at(const survey::Survey &survey, const std::string &station) {
  return works::nearest(works::framing(survey).value(), length(station));
}

} // namespace

TEST_CASE("frames: numbered with the stations, the nearest and how far from it") {
  const auto survey = framed("0.5", "with stations");
  CHECK(at(survey, "3.62 m").number == 6);
  CHECK(at(survey, "3.62 m").off == length("120"));
  CHECK(at(survey, "3.9 m").number == 7);
  CHECK(at(survey, "3.9 m").off == length("-100"));
  CHECK(at(survey, "0.1 m").number == -1);
  CHECK(at(survey, "0.1 m").off == length("100"));
}

TEST_CASE("frames: numbered against the stations") {
  const auto survey = framed("15", "against stations");
  CHECK(at(survey, "3.1 m").number == 24);
  CHECK(at(survey, "3.1 m").off == length("100"));
  CHECK(works::framing(survey)->station(24) == length("3 m"));
  CHECK(at(survey, "15.3 m").number == -1);
  CHECK(at(survey, "15.3 m").off == length("-200"));
}

TEST_CASE("frames: of two as near, the one of the higher number") {
  CHECK(at(framed("0.5", "with stations"), "3.75 m").number == 7);
  CHECK(at(framed("0.5", "with stations"), "3.75 m").off == length("-250"));
  CHECK(at(framed("0.5", "with stations"), "3.749999999 m").number == 6);
  CHECK(at(framed("15", "against stations"), "3.25 m").number == 24);
  CHECK(at(framed("15", "against stations"), "3.25 m").off == length("250"));
}

TEST_CASE("frames: none where their place, direction or spacing is not given") {
  auto survey = framed("0.5", "with stations");
  SECTION("place") { survey.datum.frame_zero.reset(); }
  SECTION("direction") { survey.datum.frames_run = {}; }
  SECTION("spacing") { survey.vessel.frame_spacing.reset(); }
  CHECK_FALSE(works::framing(survey));
}
