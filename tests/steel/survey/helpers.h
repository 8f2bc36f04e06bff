#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "house_words.h"
#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/survey/reader.h"
#include "support/temp_folder.h"

namespace strakebook::survey::testing {

inline const std::filesystem::path here = STRAKEBOOK_TESTS "/steel/survey";

struct Run {
  Survey survey;
  base::Diagnostics found;
};

/// Reads a file as the whole way does: the checks of the whole file run only on a survey that could be read.
inline Run run(const std::filesystem::path &file) {
  Run one;
  const auto house = house_words();
  one.survey = read_survey(file, house, one.found);
  if (one.found.ok())
    check_survey(one.survey, house, one.found);
  return one;
}

using Folder = support::TempFolder;

/// A small sound survey; `readings` and `rest` are put in as they stand.
inline std::string small_survey(const std::string &readings, const std::string &rest = "") {
  return R"(strakebook: 1
house: base
report: {number: T 1, issue: 1, state: draft}
vessel: {source: measured, name: Reed Warbler, length: 18.0 m, beam: 2.08 m}
datum: {from: fore face of stem, towards: aft, station-unit: m}
gauges: {ut: {u: 0.10}}
zones:
  W: {name: wind-and-water, plating: side, original: 5.0, basis: builder's drawing, source: "document, drawing 3"}
rows:
  PW: {zone: W, side: port, name: wind-and-water}
  SW: {zone: W, side: starboard, name: wind-and-water}
)" + readings +
         rest;
}

/// Readings written in the survey itself: `marks` is the declared count.
inline std::string inline_readings(const std::string &cells, int marks, const std::string &unit = "mm") {
  return fmt::format(
      "readings: {{inline: {}, unit: {}, marks: {}, surface: bare, gauge: ut, reduce: least of repeats}}\n",
      cells, unit, marks);
}

} // namespace strakebook::survey::testing
