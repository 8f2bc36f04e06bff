#include "strakebook/house/placeholders.h"

namespace strakebook::house {

std::vector<std::string> placeholders(std::string_view wording) {
  std::vector<std::string> names;
  for (auto open = wording.find('{'); open != wording.npos; open = wording.find('{', open + 1)) {
    const auto close = wording.find('}', open);
    names.emplace_back(wording.substr(open + 1, close == wording.npos ? close : close - open - 1));
  }
  return names;
}

bool braces_close(std::string_view wording) {
  while (true) {
    const auto open = wording.find_first_of("{}");
    if (open == wording.npos)
      return true;
    const auto close = wording.find_first_of("{}", open + 1);
    if (wording[open] != '{' || close == wording.npos || wording[close] != '}' || close == open + 1)
      return false;
    wording.remove_prefix(close + 1);
  }
}

} // namespace strakebook::house
