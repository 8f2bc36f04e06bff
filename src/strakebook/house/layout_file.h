#pragma once

#include <optional>
#include <string>

#include "strakebook/base/source.h"
#include "strakebook/house/find_layout.h"

namespace strakebook::house {

struct LayoutFile {
  Layer layer;
  base::Located<std::string> extends; ///< empty: the layout stands by itself
  base::SourceSpan top;               ///< its first line
};

/// Reads a layout's file and the parts that it names, and joins them: a value may be written once only.
std::optional<LayoutFile> read_layout_file(std::string name, const FoundLayout &found,
                                           const base::SourceSpan &from, base::Diagnostics &sink);

} // namespace strakebook::house
