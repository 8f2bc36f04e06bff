#pragma once

#include <map>
#include <string>

#include "strakebook/base/decimal.h"
#include "strakebook/base/length.h"

namespace strakebook::policy {

/// What floating is reckoned with, and what it must keep.
struct AfloatRule {
  std::map<std::string, base::Decimal> waters; ///< "fresh" -> density in t/m3
  base::Length least_freeboard;                ///< less is to be answered
  base::Length least_downflooding;             ///< height of the lowest opening, likewise
  std::string source;
};

} // namespace strakebook::policy
