#pragma once

#include <string>
#include <string_view>

namespace strakebook::base {

std::string sha256_hex(std::string_view bytes); ///< 64 lower-case hex digits (FIPS 180-4)

} // namespace strakebook::base
