#include "strakebook/paper/media/encode.h"

#include <csetjmp>
#include <cstdio>
#include <cstdlib>
#include <jpeglib.h>
#include <new>
#include <stdexcept>
#include <zlib.h>

namespace strakebook::media {

namespace {

/// libjpeg is left by longjmp on an error, so what owns memory lives here.
struct Encoder {
  Encoder() {
    info.err = jpeg_std_error(&errors);
    errors.error_exit = [](j_common_ptr failed) { std::longjmp(static_cast<Encoder *>(failed->client_data)->on_error, 1); };
    info.client_data = this;
  }
  Encoder(const Encoder &) = delete;
  Encoder &operator=(const Encoder &) = delete;
  ~Encoder() {
    jpeg_destroy_compress(&info);
    std::free(bytes);
  }

  jpeg_compress_struct info{};
  jpeg_error_mgr errors{};
  std::jmp_buf on_error{};
  unsigned char *bytes = nullptr;
  unsigned long size = 0;
};

void choose(jpeg_compress_struct &info, const Pixels &pixels, int components, int quality) {
  info.image_width = static_cast<JDIMENSION>(pixels.width);
  info.image_height = static_cast<JDIMENSION>(pixels.height);
  info.input_components = components;
  info.in_color_space = components == 1 ? JCS_GRAYSCALE : JCS_RGB;
  jpeg_set_defaults(&info);
  info.write_JFIF_header = FALSE; // as of what passes through: such data decode to themselves again
  jpeg_set_quality(&info, quality, TRUE);
  info.optimize_coding = TRUE;
  info.comp_info[0].h_samp_factor = info.comp_info[0].v_samp_factor = 1;
}

/// Pixels as the encoder takes them.
std::string samples_of(const Pixels &pixels, int components) {
  if (components == 3) return pixels.rgb;
  std::string grey;
  grey.reserve(pixels.rgb.size() / 3);
  for (std::size_t i = 0; i < pixels.rgb.size(); i += 3) grey += pixels.rgb[i];
  return grey;
}

} // namespace

std::string encode_jpeg(const Pixels &pixels, int components, int quality) {
  std::string samples = samples_of(pixels, components);
  auto *const first = reinterpret_cast<JSAMPLE *>(samples.data());
  const std::size_t row = samples.size() / static_cast<std::size_t>(pixels.height);
  Encoder encoder;
  auto &info = encoder.info;
  if (setjmp(encoder.on_error) != 0) throw std::bad_alloc();
  jpeg_create_compress(&info);
  info.client_data = &encoder;
  jpeg_mem_dest(&info, &encoder.bytes, &encoder.size);
  choose(info, pixels, components, quality);
  jpeg_start_compress(&info, TRUE);
  while (info.next_scanline < info.image_height) {
    JSAMPROW line = first + info.next_scanline * row;
    jpeg_write_scanlines(&info, &line, 1);
  }
  jpeg_finish_compress(&info);
  return {reinterpret_cast<const char *>(encoder.bytes), encoder.size};
}

std::string deflate_rows(const Pixels &pixels) {
  uLongf size = compressBound(pixels.rgb.size());
  std::string packed(size, '\0');
  const int status = compress2(reinterpret_cast<Bytef *>(packed.data()), &size,
                               reinterpret_cast<const Bytef *>(pixels.rgb.data()), pixels.rgb.size(), Z_BEST_COMPRESSION);
  if (status != Z_OK) throw std::bad_alloc();
  packed.resize(size);
  return packed;
}

std::string inflate_rows(const std::string &packed, std::size_t bytes) {
  std::string rows(bytes, '\0');
  uLongf size = bytes;
  const int status = uncompress(reinterpret_cast<Bytef *>(rows.data()), &size,
                                reinterpret_cast<const Bytef *>(packed.data()), packed.size());
  if (status != Z_OK || size != bytes) throw std::logic_error("a picture whose pixels do not fill its size");
  return rows;
}

} // namespace strakebook::media
