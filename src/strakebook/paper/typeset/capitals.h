#pragma once

#include <string>
#include <string_view>

namespace strakebook::typeset {

/// The text in capitals: Latin letters up to U+017F; a sharp s becomes SS; everything else stays.
std::string capitals(std::string_view text);

} // namespace strakebook::typeset
