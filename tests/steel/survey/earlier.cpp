#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using namespace strakebook::survey;
using namespace strakebook::survey::testing;

namespace {

/// A small survey of 2026 beside one of 2021 whose datum is `datum` and whose readings are the lines `grid`.
Run beside(const Folder &folder, const std::string &datum, const std::string &grid, int stations, int marks,
           const std::string &rest = "") {
  folder.write("then.csv", grid);
  auto text = small_survey(inline_readings("{PW: {1: 4.8}}", 1));
  text.replace(text.find("state: draft"), 12, "state: draft, inspected: 2026-10-14");
  return run(folder.write("survey.yaml",
                          text + fmt::format("earlier-surveys:\n  V21:\n    inspected: 2021-10-14\n    source: measured\n"
                                             "    gauge: another\n    u: 0.1\n    datum: {{{}}}\n    readings: {{file: then.csv, "
                                             "separator: comma, unit: mm, stations: {}, marks: {}}}\n{}",
                                             datum, stations, marks, rest)));
}

} // namespace

TEST_CASE("an earlier survey is read with its own datum, its stations as distances and as they were written") {
  const auto whole = run(here / "whole/survey.yaml").survey;
  REQUIRE(whole.earlier.size() == 1);
  const auto &then = whole.earlier.front();
  CHECK(then.id == "V21");
  CHECK(then.inspected.value == base::Date{2021, 10, 12});
  CHECK(then.u == base::Length::micrometres(150));
  CHECK(then.depth_u == base::Length::micrometres(200));
  CHECK(then.datum.counts == Counts::forward);
  CHECK(then.datum.stations_in == StationsIn::frames);
  REQUIRE(then.marks.size() == 5); // rows in this survey's order, stations ascending
  CHECK(then.marks.front().id() == "PW 30");
  CHECK(then.marks.front().station.value == base::Length::millimetres(15'000));
  CHECK(then.marks.at(2).repeats.size() == 2);
  CHECK(then.marks.at(3).id() == "BC 30");
  CHECK(then.marks.at(3).status == Status::not_cleaned);
  REQUIRE(then.pits.size() == 1);
  CHECK(then.pits.front().at.station.raw == "29.5");
  CHECK(then.pits.front().at.station.value == base::Length::millimetres(14'750));
  CHECK(then.pits.front().remaining() == base::Length::micrometres(4900));

  CHECK(whole.inputs.at(2).kind == "earlier readings");
  CHECK(whole.inputs.at(2).path == "earlier/2021.csv");
  CHECK(whole.inputs.at(2).marks == 5);
  CHECK(whole.inputs.at(2).digest.size() == 64);
}

TEST_CASE("stations of an earlier survey are counted in its own unit") {
  Folder folder;
  const auto feet = beside(folder, "from: stem, counts: aft, zero: 0 m, stations-in: ft", "station ft,PW\n10,4.9\n12 ft 6 in,4.8\n", 2, 2);
  INFO(base::terminal_text(feet.found));
  REQUIRE(feet.found.ok());
  CHECK(feet.survey.earlier.front().marks.at(0).station.value == base::Length::nanometres(3'048'000'000)); // 10 ft
  CHECK(feet.survey.earlier.front().marks.at(1).id() == "PW 12 ft 6 in");

  const auto frames = beside(folder, "from: stem, counts: aft, zero: 0 m, stations-in: frames, frame-spacing: 18 in",
                             "station frames,PW\n-1,4.9\n2.5,4.8\n", 2, 2);
  INFO(base::terminal_text(frames.found));
  REQUIRE(frames.found.ok());
  CHECK(frames.survey.earlier.front().marks.at(0).station.value == base::Length::nanometres(-457'200'000)); // 18 in
  CHECK(frames.survey.earlier.front().marks.at(1).station.value == base::Length::nanometres(1'143'000'000)); // 45 in
}

TEST_CASE("a head in another unit than the earlier datum's is refused") {
  Folder folder;
  const auto one = beside(folder, "from: stem, counts: aft, zero: 0 m, stations-in: m", "station frames,PW\n1,4.9\n", 1, 1);
  REQUIRE(one.found.errors() == 1);
  CHECK(one.found.all().front().code == base::Code::csv_header);
  CHECK(one.found.all().front().write == "station m");
}

TEST_CASE("years cannot be counted without the day of this inspection") {
  Folder folder;
  folder.write("then.csv", "station m,PW\n1,4.9\n");
  const auto one = run(folder.write("survey.yaml", small_survey(inline_readings("{PW: {1: 4.8}}", 1),
                                                               "earlier-surveys:\n  V21: {inspected: 2021-10-14, source: measured, gauge: a, u: 0.1, "
                                                               "datum: {from: stem, counts: aft, zero: 0 m, stations-in: m}, readings: {file: then.csv, "
                                                               "separator: comma, unit: mm, stations: 1, marks: 1}}\n")));
  REQUIRE(one.found.errors() == 1);
  CHECK(one.found.all().front().code == base::Code::earlier_not_before);
}
