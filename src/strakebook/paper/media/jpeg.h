#pragma once

#include <string>
#include <string_view>

#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

struct Jpeg {
  Reading reading;      ///< upright RGB
  std::string as_given; ///< the data without metadata where a PDF may carry them as they are: every pixel kept; else empty
  int components = 3;   ///< 1 grey, 3 colour
};

/// Decodes a whole JPEG (grey, YCbCr, RGB, CMYK, YCCK; baseline or progressive), and keeps as many pixels of it as `kept`
/// says. Throws Refusal on any error or warning of the decoder, an unsupported kind, or more than `most_pixels`.
Jpeg decode_jpeg(std::string_view bytes, long long most_pixels, const KeptExtent &kept);

} // namespace strakebook::media
