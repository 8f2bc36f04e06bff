#pragma once

#include <optional>
#include <string_view>

#include "strakebook/house/layers.h"

namespace strakebook::house {

struct FoundLayout {
  base::Folder folder; ///< parts are named from here
  std::string file;
  bool installed = false; ///< not beside the survey
};

/// NAME.yaml beside the survey, or else among the installed layouts. Otherwise layout_unknown at `from`, with
/// what there is.
std::optional<FoundLayout> find_layout(std::string_view name, const Folders &folders,
                                       const base::SourceSpan &from, base::Diagnostics &sink);

} // namespace strakebook::house
