#include "strakebook/paper/media/media.h"

#include <cstdio>
#include <fmt/format.h>
#include <jpeglib.h>
#include <png.h>
#include <zlib.h>

#include "strakebook/paper/media/encode.h"

namespace strakebook::media {

std::string file_of(const Image &image) {
  return image.coding == Image::Coding::jpeg ? image.data : encode_png(pixels_of(image));
}

std::vector<std::string> libraries() {
#ifdef LIBJPEG_TURBO_VERSION_NUMBER
  constexpr int turbo = LIBJPEG_TURBO_VERSION_NUMBER, thousand = 1000;
  const auto jpeg = fmt::format("libjpeg-turbo {}.{}.{}", turbo / (thousand * thousand), turbo / thousand % thousand, turbo % thousand);
#else
  const auto jpeg = fmt::format("libjpeg {}", JPEG_LIB_VERSION);
#endif
  return {jpeg, fmt::format("libpng {}", png_get_libpng_ver(nullptr)), fmt::format("zlib {}", zlibVersion())};
}

} // namespace strakebook::media
