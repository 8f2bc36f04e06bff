#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "strakebook/paper/media/media.h"

namespace strakebook::media {

/// What a decoding came to: an image, or why the file is refused.
using Answer = std::variant<Image, std::string>;

/// An answer as bytes and back, for one and the same program. The digest of an image is not carried.
std::string packed(const Answer &answer);

/// nullopt: no answer that packed() makes, or an image that cannot be: the side that decoded is not trusted.
std::optional<Answer> unpacked(std::string_view bytes);

} // namespace strakebook::media
