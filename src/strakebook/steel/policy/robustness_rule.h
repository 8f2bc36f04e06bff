#pragma once

#include <string>
#include <vector>

#include "strakebook/base/decimal.h"
#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"

namespace strakebook::policy {

/// Over which ranges a verdict is tried.
struct RobustnessRule {
  std::vector<base::Length> limits;  ///< absolute, ascending
  std::vector<base::Ratio> losses;   ///< shares of the original, ascending
  std::vector<base::Decimal> doubts; ///< factors on the standard uncertainty, ascending; 1 is among them
  std::string source;
};

} // namespace strakebook::policy
