#pragma once

#include <string>

#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

/// A baseline JPEG with its colours at full resolution, without any head but what decoding needs; `components` 1 keeps the first sample of each pixel as grey.
/// Throws std::bad_alloc when there is no memory for it.
std::string encode_jpeg(const Pixels &pixels, int components, int quality);

/// An 8-bit RGB PNG without anything but its pixels. Throws std::bad_alloc when there is no memory for it.
std::string encode_png(const Pixels &pixels);

/// The rows packed by zlib (RFC 1950).
std::string deflate_rows(const Pixels &pixels);

/// The rows of deflate_rows. Throws std::logic_error when they are not `bytes` long.
std::string inflate_rows(const std::string &packed, std::size_t bytes);

} // namespace strakebook::media
