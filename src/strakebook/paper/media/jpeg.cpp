#include "strakebook/paper/media/jpeg.h"

#include <csetjmp>
#include <cstdio>
#include <cstring>
#include <jpeglib.h>

#include "strakebook/paper/media/jpeg_segments.h"
#include "strakebook/paper/media/reducer.h"
#include "strakebook/paper/media/refusal.h"

namespace strakebook::media {

namespace {

/// A progressive picture needs about ten scans; a file of thousands only keeps the decoder busy.
constexpr int most_scans = 100;

/// The state of one decoding. libjpeg is left by longjmp on an error, so what owns memory lives here, outside
/// the functions that are jumped out of.
struct Decoder {
  Decoder();
  Decoder(const Decoder &) = delete;
  Decoder &operator=(const Decoder &) = delete;
  ~Decoder() { jpeg_destroy_decompress(&info); }

  jpeg_decompress_struct info{};
  jpeg_error_mgr errors{};
  jpeg_progress_mgr progress{};
  char message[JMSG_LENGTH_MAX] = "";
  std::jmp_buf on_error{};
};

Decoder &decoder_of(j_common_ptr info) { return *static_cast<Decoder *>(info->client_data); }

[[noreturn]] void failed(j_common_ptr info) {
  auto &decoder = decoder_of(info);
  info->err->format_message(info, decoder.message);
  std::longjmp(decoder.on_error, 1);
}

/// Levels below 0 are warnings: the data are damaged and the decoder would go on with a guess.
void warned(j_common_ptr info, int level) {
  if (level < 0)
    failed(info);
}

void watch_scans(j_common_ptr info) {
  if (reinterpret_cast<j_decompress_ptr>(info)->input_scan_number <= most_scans)
    return;
  auto &decoder = decoder_of(info);
  std::snprintf(decoder.message, sizeof decoder.message, "more than %d scans", most_scans);
  std::longjmp(decoder.on_error, 1);
}

Decoder::Decoder() {
  info.err = jpeg_std_error(&errors);
  errors.error_exit = failed;
  errors.emit_message = warned;
  progress.progress_monitor = watch_scans;
  info.client_data = this;
}

/// Runs `step` with libjpeg's errors turned into a Refusal. `step` must own nothing itself.
template <class Step> void guarded(Decoder &decoder, Step step) {
  if (setjmp(decoder.on_error) == 0) {
    step();
    return;
  }
  throw Refusal(std::string("JPEG, ") + decoder.message);
}

void read_header(Decoder &decoder, std::string_view bytes) {
  guarded(decoder, [&decoder, bytes] {
    jpeg_create_decompress(&decoder.info);
    decoder.info.client_data = &decoder;
    decoder.info.progress = &decoder.progress;
    jpeg_mem_src(&decoder.info, reinterpret_cast<const unsigned char *>(bytes.data()), bytes.size());
    jpeg_read_header(&decoder.info, TRUE);
  });
}

J_COLOR_SPACE coding_of(std::string_view bytes) {
  Decoder decoder;
  read_header(decoder, bytes);
  return decoder.info.jpeg_color_space;
}

bool has_four_inks(J_COLOR_SPACE coding) { return coding == JCS_CMYK || coding == JCS_YCCK; }

/// One row of C, M, Y, K to R, G, B, without a profile. Files with an Adobe marker hold the inks inverted.
void inks_to_rgb(const unsigned char *inks, char *rgb, std::size_t width, bool inverted) {
  for (std::size_t x = 0; x < width; ++x, inks += 4)
    for (std::size_t part = 0; part < 3; ++part) {
      const unsigned ink = inverted ? inks[part] : 255u - inks[part];
      const unsigned black = inverted ? inks[3] : 255u - inks[3];
      *rgb++ = static_cast<char>((ink * black + 127) / 255);
    }
}

/// The decoder may leave out what is not needed: of eight pixels either way it makes so many (libjpeg-turbo's own fast
/// sizes). Twice what is kept is left for the mean to be taken of.
unsigned eighths(Extent stored, Extent kept) {
  for (const unsigned scale : {1u, 2u, 4u}) {
    const auto made = [scale](int side) { return (static_cast<long long>(side) * scale + 7) / 8; };
    if (made(stored.width) >= 2LL * kept.width && made(stored.height) >= 2LL * kept.height) return scale;
  }
  return 8;
}

Pixels read_pixels(Decoder &decoder, bool inverted, Extent kept) {
  auto &info = decoder.info;
  const bool inks = has_four_inks(info.jpeg_color_space);
  info.out_color_space = inks ? JCS_CMYK : JCS_RGB;
  info.scale_num = eighths({static_cast<int>(info.image_width), static_cast<int>(info.image_height)}, kept);
  info.scale_denom = 8;
  guarded(decoder, [&info] { jpeg_start_decompress(&info); });

  const std::size_t width = info.output_width;
  Reducer reducer({static_cast<int>(info.output_width), static_cast<int>(info.output_height)}, kept);
  std::string rgb_row(width * 3, '\0'), ink_row(inks ? width * 4 : 0, '\0');
  char *const rgb = rgb_row.data();
  char *const ink = ink_row.data();
  guarded(decoder, [=, &info, &reducer] {
    while (info.output_scanline < info.output_height) {
      auto *target = reinterpret_cast<JSAMPROW>(inks ? ink : rgb);
      jpeg_read_scanlines(&info, &target, 1);
      if (inks)
        inks_to_rgb(target, rgb, width, inverted);
      reducer.take(reinterpret_cast<const unsigned char *>(rgb));
    }
    jpeg_finish_decompress(&info);
  });
  return std::move(reducer).pixels();
}

/// Whether readers of a PDF decode the stripped data to the very colours they had before: without the JFIF
/// head a decoder guesses the colour coding, so the guess must come out the same, and RGB coding needs
/// Adobe's marker to be known.
bool may_pass_through(const JpegSegments &segments, J_COLOR_SPACE coding) {
  const bool huffman_frame = segments.frame_marker >= 0xC0 && segments.frame_marker <= 0xC2;
  const bool known = coding == JCS_GRAYSCALE || coding == JCS_YCbCr || (coding == JCS_RGB && segments.adobe);
  return segments.orientation == 1 && huffman_frame && known &&
         coding_of(segments.without_metadata) == coding;
}

} // namespace

Jpeg decode_jpeg(std::string_view bytes, long long most_pixels, const KeptExtent &kept) {
  Decoder decoder;
  read_header(decoder, bytes);
  check_pixels(decoder.info.image_width, decoder.info.image_height, most_pixels);
  const auto coding = decoder.info.jpeg_color_space;
  if (coding == JCS_UNKNOWN)
    throw Refusal("JPEG, an unknown colour coding");
  auto segments = walk_segments(bytes);
  const Extent stored{static_cast<int>(decoder.info.image_width), static_cast<int>(decoder.info.image_height)};
  const auto given = turned(stored, segments.orientation), left = kept(given);

  Jpeg result{.reading = {given, upright(read_pixels(decoder, segments.adobe, turned(left, segments.orientation)),
                                         segments.orientation)},
              .as_given = {},
              .components = coding == JCS_GRAYSCALE ? 1 : 3};
  if (left == given && may_pass_through(segments, coding))
    result.as_given = std::move(segments.without_metadata);
  return result;
}

} // namespace strakebook::media
