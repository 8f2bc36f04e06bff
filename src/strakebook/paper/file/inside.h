#pragma once

#include <string_view>

#include "strakebook/paper/file/contents.h"

namespace strakebook::file {

/// What contents_of() says, read in this process. Throws what libqpdf throws; a damaged file may take any memory and time.
Contents contents_inside(std::string_view pdf);

} // namespace strakebook::file
