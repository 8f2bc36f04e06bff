#pragma once

#include <string>
#include <string_view>

#include "strakebook/base/diagnostic.h"

namespace strakebook::file {

/// A copy of `pdf` with the first page of `stamp` laid over each of its pages; attachments, tags and links are kept, a signature is
/// taken out, since it would be broken. Same files, same bytes. Empty, with output_failed in `sink`, where either cannot be read.
std::string stamped(std::string_view pdf, std::string_view stamp, base::Diagnostics &sink);

} // namespace strakebook::file
