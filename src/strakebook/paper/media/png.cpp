#include "strakebook/paper/media/png.h"

#include <csetjmp>
#include <cstring>
#include <png.h>

#include "strakebook/paper/media/exif.h"
#include "strakebook/paper/media/reducer.h"
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

/// One row of RGBA to RGB in place: what is transparent shows the white of the paper.
void lay_on_white(unsigned char *row, std::size_t width) {
  for (std::size_t i = 0; i < width; ++i) {
    const unsigned alpha = row[i * 4 + 3];
    for (std::size_t part = 0; part < 3; ++part)
      row[i * 3 + part] =
          static_cast<unsigned char>((row[i * 4 + part] * alpha + 255 * (255 - alpha) + 127) / 255);
  }
}

/// Rows in their order; only an interlaced picture has to be whole before its first row can go on.
void read_rows(Decoder &decoder, Extent stored, Reducer &reducer) {
  const auto row_bytes = png_get_rowbytes(decoder.png, decoder.info);
  const bool interlaced = png_get_interlace_type(decoder.png, decoder.info) != PNG_INTERLACE_NONE;
  const bool alpha = png_get_channels(decoder.png, decoder.info) == 4;
  const auto width = static_cast<std::size_t>(stored.width), height = static_cast<std::size_t>(stored.height);
  std::string held(row_bytes * (interlaced ? height : 1), '\0');
  auto *const first = reinterpret_cast<png_bytep>(held.data());
  guarded(decoder, [=, &decoder, &reducer] {
    for (int pass = interlaced ? PNG_INTERLACE_ADAM7_PASSES : 1; pass > 1; --pass)
      for (std::size_t y = 0; y < height; ++y)
        png_read_row(decoder.png, first + y * row_bytes, nullptr);
    for (std::size_t y = 0; y < height; ++y) {
      auto *const row = first + (interlaced ? y * row_bytes : 0);
      png_read_row(decoder.png, row, nullptr);
      if (alpha)
        lay_on_white(row, width);
      reducer.take(row);
    }
    png_read_end(decoder.png, decoder.info);
  });
}

int orientation(const Decoder &decoder) {
  png_uint_32 length = 0;
  png_bytep exif = nullptr;
  if (!png_get_eXIf_1(decoder.png, decoder.info, &length, &exif))
    return 1;
  return exif_orientation({reinterpret_cast<const char *>(exif), length});
}

struct Stored {
  Extent extent;
  Pixels kept;     ///< not yet turned
  int orientation; ///< it may stand behind the pixels, and is known once they are read
};

Stored read_stored(std::string_view bytes, long long most_pixels, const KeptExtent &kept, int orientation_assumed) {
  Decoder decoder(bytes);
  open(decoder);
  const auto width = png_get_image_width(decoder.png, decoder.info);
  const auto height = png_get_image_height(decoder.png, decoder.info);
  check_pixels(width, height, most_pixels);
  const Extent stored{static_cast<int>(width), static_cast<int>(height)};
  ask_for_eight_bit_rgb(decoder);
  Reducer reducer(stored, turned(kept(turned(stored, orientation_assumed)), orientation_assumed));
  read_rows(decoder, stored, reducer);
  return {stored, std::move(reducer).pixels(), orientation(decoder)};
}

} // namespace

Reading decode_png(std::string_view bytes, long long most_pixels, const KeptExtent &kept) {
  auto read = read_stored(bytes, most_pixels, kept, 1);
  if (turned(read.extent, read.orientation) != read.extent)
    read = read_stored(bytes, most_pixels, kept, read.orientation);
  return {turned(read.extent, read.orientation), upright(std::move(read.kept), read.orientation)};
}

} // namespace strakebook::media
