#include "strakebook/paper/media/encode.h"

#include <csetjmp>
#include <new>
#include <png.h>

namespace strakebook::media {

namespace {

/// libpng leaves a failing call by longjmp, so what owns memory lives here.
struct Encoder {
  Encoder() = default;
  Encoder(const Encoder &) = delete;
  Encoder &operator=(const Encoder &) = delete;
  ~Encoder() { png_destroy_write_struct(&png, &info); }

  png_structp png = nullptr;
  png_infop info = nullptr;
  std::string bytes;
  bool no_memory = false; ///< noted, since no exception may pass through libpng
};

void take(png_structp png, png_bytep bytes, std::size_t count) {
  auto &encoder = *static_cast<Encoder *>(png_get_io_ptr(png));
  try {
    encoder.bytes.append(reinterpret_cast<const char *>(bytes), count);
  } catch (const std::bad_alloc &) {
    encoder.no_memory = true;
  }
}

void nothing_to_flush(png_structp) {}

} // namespace

std::string encode_png(const Pixels &pixels) {
  constexpr int eight_bits = 8, best = 9;
  Encoder encoder;
  encoder.png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  if (encoder.png) encoder.info = png_create_info_struct(encoder.png);
  if (!encoder.info) throw std::bad_alloc();
  if (setjmp(png_jmpbuf(encoder.png)) != 0) throw std::bad_alloc();
  png_set_write_fn(encoder.png, &encoder, take, nothing_to_flush);
  png_set_IHDR(encoder.png, encoder.info, static_cast<png_uint_32>(pixels.width), static_cast<png_uint_32>(pixels.height), eight_bits,
               PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_set_compression_level(encoder.png, best);
  png_write_info(encoder.png, encoder.info);
  const std::size_t row = static_cast<std::size_t>(pixels.width) * 3;
  for (std::size_t y = 0; y < static_cast<std::size_t>(pixels.height); ++y)
    png_write_row(encoder.png, reinterpret_cast<png_const_bytep>(pixels.rgb.data()) + y * row);
  png_write_end(encoder.png, nullptr);
  if (encoder.no_memory) throw std::bad_alloc();
  return std::move(encoder.bytes);
}

} // namespace strakebook::media
