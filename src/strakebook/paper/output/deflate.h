#pragma once

#include <string>
#include <string_view>

namespace strakebook::output {

/// The data in zlib form (RFC 1950). Same data, same bytes.
std::string deflated(std::string_view data);

} // namespace strakebook::output
