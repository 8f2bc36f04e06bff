#pragma once

#include <map>
#include <string>
#include <string_view>

namespace strakebook::file {

/// Codes of two bytes to UTF-8 text, from the bfchar blocks of a ToUnicode map (Adobe Technical Note 5411, 1.4.1).
std::map<unsigned, std::string> letters_of_codes(std::string_view map);

} // namespace strakebook::file
