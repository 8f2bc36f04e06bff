#pragma once

#include <string_view>
#include <vector>

/// Which way a layout that extends another may move its values.
namespace strakebook::house {

using Pattern = std::vector<std::string_view>; ///< keys from the top; "*" stands for any one key

enum class Way { up, down, to_yes, to_always, along, fixed };
struct Direction {
  Pattern path;
  Way way;
};

const std::vector<Direction> &directions();

} // namespace strakebook::house
