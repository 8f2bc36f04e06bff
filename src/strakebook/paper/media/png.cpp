#include "strakebook/paper/media/png.h"

#include <csetjmp>
#include <cstring>
#include <memory>
#include <png.h>
#include <vector>

#include "strakebook/paper/media/exif.h"
#include "strakebook/paper/media/refusal.h"

namespace strakebook::media {

namespace {

struct Source {
  std::string_view rest;
};

/// The state of one decoding. libpng leaves a failing call by longjmp, so everything that owns memory lives
/// here, outside the functions that are jumped out of.
struct Decoder {
  explicit Decoder(std::string_view bytes) : source{bytes} {}
  Decoder(const Decoder &) = delete;
  Decoder &operator=(const Decoder &) = delete;
  ~Decoder() { png_destroy_read_struct(&png, &info, nullptr); }

  Source source;
  char message[160] = "";
  png_structp png = nullptr;
  png_infop info = nullptr;
};

[[noreturn]] void failed(png_structp png, png_const_charp what) {
  auto *decoder = static_cast<Decoder *>(png_get_error_ptr(png));
  std::strncpy(decoder->message, what, sizeof decoder->message - 1);
  png_longjmp(png, 1);
}

void warned(png_structp png, png_const_charp what) { failed(png, what); }

void read_bytes(png_structp png, png_bytep to, std::size_t count) {
  auto *source = static_cast<Source *>(png_get_io_ptr(png));
  if (count > source->rest.size())
    png_error(png, "the file ends too early");
  std::memcpy(to, source->rest.data(), count);
  source->rest.remove_prefix(count);
}

/// Runs `step` with libpng's errors turned into a Refusal. `step` must own nothing itself.
template <class Step> void guarded(Decoder &decoder, Step step) {
  if (setjmp(png_jmpbuf(decoder.png)) == 0) {
    step();
    return;
  }
  throw Refusal(std::string("PNG, ") + decoder.message);
}

/// Colour profiles, texts and times are not wanted, and profiles as cameras write them often bring warnings.
void skip_metadata(png_structp png) {
  static png_byte unwanted[] = "iCCP\0tEXt\0zTXt\0iTXt\0tIME\0sPLT\0hIST";
  png_set_keep_unknown_chunks(png, PNG_HANDLE_CHUNK_NEVER, unwanted, 7);
}

void open(Decoder &decoder) {
  decoder.png = png_create_read_struct(PNG_LIBPNG_VER_STRING, &decoder, failed, warned);
  if (decoder.png)
    decoder.info = png_create_info_struct(decoder.png);
  if (!decoder.info)
    throw Refusal("PNG, no memory to decode it");
  guarded(decoder, [&decoder] {
    png_set_read_fn(decoder.png, &decoder.source, read_bytes);
    skip_metadata(decoder.png);
    png_read_info(decoder.png, decoder.info);
  });
}

void ask_for_eight_bit_rgb(Decoder &decoder) {
  guarded(decoder, [&decoder] {
    png_set_expand(decoder.png);
    png_set_scale_16(decoder.png);
    png_set_gray_to_rgb(decoder.png);
    png_set_interlace_handling(decoder.png);
    png_read_update_info(decoder.png, decoder.info);
  });
}

std::string read_rows(Decoder &decoder, std::size_t height) {
  const auto row_bytes = png_get_rowbytes(decoder.png, decoder.info);
  std::string pixels(row_bytes * height, '\0');
  std::vector<png_bytep> rows(height);
  for (std::size_t y = 0; y < height; ++y)
    rows[y] = reinterpret_cast<png_bytep>(pixels.data()) + y * row_bytes;
  guarded(decoder, [&decoder, table = rows.data()] {
    png_read_image(decoder.png, table);
    png_read_end(decoder.png, decoder.info);
  });
  return pixels;
}

/// RGBA to RGB in place: what is transparent shows the white of the paper.
void lay_on_white(std::string &pixels) {
  auto *bytes = reinterpret_cast<unsigned char *>(pixels.data());
  const auto count = pixels.size() / 4;
  for (std::size_t i = 0; i < count; ++i) {
    const unsigned alpha = bytes[i * 4 + 3];
    for (std::size_t part = 0; part < 3; ++part)
      bytes[i * 3 + part] =
          static_cast<unsigned char>((bytes[i * 4 + part] * alpha + 255 * (255 - alpha) + 127) / 255);
  }
  pixels.resize(count * 3);
}

int orientation(const Decoder &decoder) {
  png_uint_32 length = 0;
  png_bytep exif = nullptr;
  if (!png_get_eXIf_1(decoder.png, decoder.info, &length, &exif))
    return 1;
  return exif_orientation({reinterpret_cast<const char *>(exif), length});
}

} // namespace

Pixels decode_png(std::string_view bytes, long long most_pixels) {
  Decoder decoder(bytes);
  open(decoder);
  const auto width = png_get_image_width(decoder.png, decoder.info);
  const auto height = png_get_image_height(decoder.png, decoder.info);
  check_pixels(width, height, most_pixels);
  ask_for_eight_bit_rgb(decoder);
  Pixels result{static_cast<int>(width), static_cast<int>(height), read_rows(decoder, height)};
  if (png_get_channels(decoder.png, decoder.info) == 4)
    lay_on_white(result.rgb);
  return upright(std::move(result), orientation(decoder));
}

} // namespace strakebook::media
