#pragma once

#include <string_view>

#include "strakebook/steel/amend/amend.h"

/// The data words of a comparison, as its JSON form writes them.
namespace strakebook::amend {

std::string_view word_of(Kind kind); ///< "recommendation"
std::string_view word_of(How how);   ///< "withdrawn"

} // namespace strakebook::amend
