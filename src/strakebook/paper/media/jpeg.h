#pragma once

#include <string>
#include <string_view>

#include "strakebook/paper/media/pixels.h"

namespace strakebook::media {

struct Jpeg {
  Pixels pixels;          ///< upright RGB
  std::string compressed; ///< the data without metadata where a PDF may carry them as they are; else empty
  int components = 3;
};

/// Decodes a whole JPEG (grey, YCbCr, RGB, CMYK, YCCK; baseline or progressive). Throws Refusal on any error
/// or warning of the decoder, an unsupported kind, or more than `most_pixels`.
Jpeg decode_jpeg(std::string_view bytes, long long most_pixels);

} // namespace strakebook::media
