#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace strakebook::house {

/// Names of the place holders in a wording, in order: "p. {page} of {pages}" -> page, pages. A brace that
/// does not close gives the rest of the text as a name, which nothing fills.
std::vector<std::string> placeholders(std::string_view wording);

/// Every brace opens or closes a place holder with a name.
bool braces_close(std::string_view wording);

} // namespace strakebook::house
