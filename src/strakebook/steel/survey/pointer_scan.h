#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/steel/survey/prose.h"

namespace strakebook::survey {

/// A stretch of prose that reads like a reference.
struct FoundPointer {
  std::size_t begin = 0, length = 0;
  Target target{};
  std::string id;
  bool leads = false; ///< something of that name is in the survey
  bool place = false; ///< a row and station without a mark, but where a pit, photo, doubler or the like is
};

std::vector<FoundPointer> scan_pointers(const Survey &survey, std::string_view text);

} // namespace strakebook::survey
