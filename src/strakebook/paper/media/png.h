#pragma once

#include <string_view>

#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

/// Decodes a whole PNG to upright RGB, and keeps as many pixels of it as `kept` says: palette and grey become RGB, 16 bits
/// become 8, transparency lies on white. Throws Refusal on any error or warning of the decoder, a checksum that does not
/// match, or more than `most_pixels`.
Reading decode_png(std::string_view bytes, long long most_pixels, const KeptExtent &kept);

} // namespace strakebook::media
