#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace strakebook::base {

/// Bytes that a frame adds: a mark, the length of what it carries in 16 hex digits, and its SHA-256 in 64.
inline constexpr std::size_t frame_size = 4 + 16 + 64;

/// An answer as it goes over the pipe.
std::string framed(std::string_view answer);

/// The answer of a whole and undamaged frame; nullopt for anything else, also for bytes after it.
std::optional<std::string> unframed(std::string_view frame);

} // namespace strakebook::base
