#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/works/works.h"

/// Stretches of single rows that do not meet their limit.
namespace strakebook::works {

/// A place that does not meet its limit.
struct Failing {
  std::string id;  ///< mark or pit
  Length judged;
};

struct Run {
  std::size_t row = 0; ///< index into Survey::rows
  Area::Kind kind = Area::Kind::falls_short;
  Stretch along;
  std::vector<Failing> places; ///< stations ascending; marks before pits where both stand at one
  int unseen = 0;              ///< planned marks within it that show nothing of the hull plate
};

/// The runs of one row, of both kinds, stations ascending within a kind.
std::vector<Run> runs_of(const survey::Survey &survey, const assess::Assessment &assessment, std::size_t row);

} // namespace strakebook::works
