#pragma once

#include <string>

#include "strakebook/base/ratio.h"

namespace strakebook::policy {

/// What may be said of plate that nobody measured, and from how much.
struct UnseenRule {
  int least_blocks = 0;       ///< fewer block maxima give no extreme value
  base::Ratio confidence;     ///< of the interval of a return level; between 0 and 1
  base::Ratio significance;   ///< a fit whose chance is less than this is said to be poor; between 0 and 1
  std::string source;
};

} // namespace strakebook::policy
