#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/codes.h"
#include "strakebook/base/source.h"

namespace strakebook::base {

/// What makes bytes unfit to be read as plain text, and where.
struct TextFault {
  std::size_t at = 0; ///< byte offset
  Code code = Code::not_utf8;
  std::string message, write;
};

/// The first byte that is not UTF-8, a byte order mark, a control character other than tab and line end, or a
/// carriage return without its line feed. `otherwise` is the code for the last three. nullopt: plain text.
std::optional<TextFault> first_fault(std::string_view bytes, Code otherwise);

/// The place of a byte of a file, one code point long.
SourceSpan span_at(const SourcePtr &file, std::size_t offset);

} // namespace strakebook::base
