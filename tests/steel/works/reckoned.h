#pragma once

#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/works/works.h"

namespace strakebook::sample {

inline works::Works reckoned(const survey::Survey &survey, const policy::Policy &policy = house()) {
  return works::reckon(survey, assessed(survey, policy), policy);
}

/// A side of 6 mm against 4.0 mm: rows PU and PW to port, SW to starboard, each standing for 300 mm of it.
inline SurveyBuilder side() {
  SurveyBuilder made;
  made.zone("W", "6").criteria({"absolute-4.0"}).row("PU", "W").row("PW", "W").row("SW", "W");
  for (auto &row : made.made.rows) row.stands_for = mm("300 mm");
  made.made.rows[2].side = survey::Side::starboard;
  return made;
}

inline survey::Reach reach(const std::vector<std::string> &rows, const std::string &from, const std::string &to) {
  return {.rows = rows, .from = station(from), .to = station(to), .span = {.file = {}, .line = 1}};
}

/// A plate with all that is asked of one.
inline survey::SteelworkItem plate(const std::string &action, const std::string &length, const std::string &breadth,
                                   const std::string &thickness) {
  survey::SteelworkItem item{.id = "S1", .action = action, .at = reach({"PW"}, "2", "4")};
  item.length = mm(length);
  item.breadth = mm(breadth);
  item.thickness = mm(thickness);
  return item;
}

} // namespace strakebook::sample
