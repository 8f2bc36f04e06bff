#pragma once

#include <string>

#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"

namespace strakebook::policy {

/// How surveys of different years are compared, and when the next look is due.
struct YearsRule {
  base::Length match_radius;  ///< places of one row no further apart than this are the same place
  base::Ratio life_part;      ///< of the remaining life at the upper rate, after which the next look is due: 1/2 (API 570 style)
  int longest_months = 0;     ///< the firm's cap: never later than this
  std::string source;
};

} // namespace strakebook::policy
