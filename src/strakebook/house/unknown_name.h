#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"

/// Names that a layout uses and that no table gives.
namespace strakebook::house {

/// A name that no table gives: names the known ones when they are few, and the nearest when it looks like a
/// slip. `what` says what kind of name it should be ("a tone").
void refuse_unknown(base::Diagnostics &sink, base::Code code, const base::SourceSpan &at,
                    std::string_view found, std::string_view what, std::span<const std::string> known);

/// The keys of a map, in its order.
template <class Map> std::vector<std::string> names_of(const Map &map) {
  std::vector<std::string> names;
  for (const auto &entry : map)
    names.push_back(entry.first);
  return names;
}

} // namespace strakebook::house
