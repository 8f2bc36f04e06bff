#include "strakebook/paper/media/media.h"

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/paper/media/jpeg.h"
#include "strakebook/paper/media/png.h"
#include "strakebook/paper/media/refusal.h"

namespace strakebook::media {

void check_pixels(long long width, long long height, long long most) {
  if (width <= 0 || height <= 0)
    throw Refusal("a picture without pixels");
  if (width > most / height)
    throw Refusal(
        fmt::format("a picture of {} x {} pixels, more than {} million", width, height, most / 1'000'000));
}

namespace {

using namespace std::string_view_literals;

constexpr auto png_head = "\x89PNG\r\n\x1a\n"sv, jpeg_head = "\xFF\xD8\xFF"sv;

/// What a file that is neither PNG nor JPEG seems to be, from its first bytes.
std::string kind_of(std::string_view bytes) {
  if (bytes.empty())
    return "an empty file";
  if (bytes.substr(0, 12).find("ftyp") == 4)
    return "a HEIC or AVIF picture, or a film";
  if (bytes.starts_with("GIF8"))
    return "a GIF picture";
  if (bytes.starts_with("II*\0"sv) || bytes.starts_with("MM\0*"sv))
    return "a TIFF or raw picture";
  if (bytes.starts_with("BM"))
    return "a BMP picture";
  if (bytes.starts_with("RIFF") && bytes.substr(8, 4) == "WEBP")
    return "a WebP picture";
  if (bytes.starts_with("%PDF"))
    return "a PDF file";
  return "no picture that this program knows";
}

Image decoded(const std::string &bytes, const ImageLimits &limits) {
  if (bytes.size() > limits.bytes)
    throw Refusal(fmt::format("a file of {} bytes", bytes.size()));
  Image image;
  Pixels pixels;
  if (bytes.starts_with(png_head)) {
    pixels = decode_png(bytes, limits.pixels);
  } else if (bytes.starts_with(jpeg_head)) {
    auto jpeg = decode_jpeg(bytes, limits.pixels);
    pixels = std::move(jpeg.pixels);
    image.jpeg = std::move(jpeg.compressed);
    image.jpeg_components = jpeg.components;
  } else {
    throw Refusal(kind_of(bytes));
  }
  image.ref = {base::sha256_hex(bytes), pixels.width, pixels.height};
  image.rgb = std::move(pixels.rgb);
  return image;
}

} // namespace

std::optional<Image> admit(const std::string &bytes, const std::string &shown_path,
                           const base::SourceSpan &from, base::Diagnostics &sink, ImageLimits limits) {
  try {
    return decoded(bytes, limits);
  } catch (const Refusal &refusal) {
    sink.add({.code = base::Code::photo_unreadable,
              .span = from,
              .message = fmt::format("{} does not decode cleanly: {}", shown_path, refusal.what()),
              .expected = fmt::format(
                  "a whole, undamaged PNG or JPEG picture of at most {} million pixels and {} MiB",
                  limits.pixels / 1'000'000, limits.bytes >> 20),
              .write = "copy the file again from the camera, or export it anew as JPEG",
              .subject = {}});
    return std::nullopt;
  }
}

} // namespace strakebook::media
