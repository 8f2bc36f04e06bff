#pragma once

#include <string>

#include "strakebook/base/yaml_tree.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook {

/// The readings of a survey as the next one wants them: one grid in a file, and its figures.
struct GridToCopy {
  std::string file; ///< where it has to lie: "earlier/2026.csv"
  std::string separator, unit, stations, marks;
  std::string what_to_do; ///< remarks: which file to copy, or the grid itself where the survey has none in one file
};

/// `written` is the survey's own file. Marks on doublers are not in the grid.
GridToCopy grid_to_copy(const survey::Survey &survey, const base::YamlNode &written, const std::string &year);

} // namespace strakebook
