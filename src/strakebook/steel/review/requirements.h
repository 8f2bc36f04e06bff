#pragma once

#include <span>
#include <string_view>

#include "strakebook/steel/review/findings.h"

/// What a final report can be required to have, in one table.
namespace strakebook::review {

/// A place where something required is missing.
struct Gap {
  std::string where; ///< "zone W"; empty where the path says it all
  base::SourceSpan span; ///< of the nearest thing that is there
};
using Gaps = std::vector<Gap>;

struct Requirement {
  std::string_view path; ///< as a layout names it
  bool always = false;   ///< asked of every final, whatever the layout says
  std::string_view what; ///< what it is, for the message
  std::string_view write;
  Gaps (*gaps)(const Subject &);
};

std::span<const Requirement> requirements(); ///< in report order

} // namespace strakebook::review
