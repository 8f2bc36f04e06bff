#include <fmt/format.h>

#include "strakebook/paper/media/encode.h"
#include "strakebook/paper/media/jpeg.h"
#include "strakebook/paper/media/media.h"
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

Image image_of(Extent given, const Pixels &pixels, Image::Coding coding, int components, std::string data) {
  return {.ref = {{}, pixels.width, pixels.height},
          .given = given,
          .coding = coding,
          .components = components,
          .data = std::move(data)};
}

Image from_png(const std::string &bytes, long long most, const KeptExtent &kept) {
  const auto png = decode_png(bytes, most, kept);
  return image_of(png.given, png.pixels, Image::Coding::deflated, 3, deflate_rows(png.pixels));
}

Image from_jpeg(const std::string &bytes, long long most, const KeptExtent &kept, int quality) {
  auto jpeg = decode_jpeg(bytes, most, kept);
  const auto &pixels = jpeg.reading.pixels;
  auto data = jpeg.as_given.empty() ? encode_jpeg(pixels, jpeg.components, quality) : std::move(jpeg.as_given);
  return image_of(jpeg.reading.given, pixels, Image::Coding::jpeg, jpeg.components, std::move(data));
}

} // namespace

Image decode_picture(const std::string &bytes, const Placing &placing, const ImageLimits &limits) {
  const KeptExtent kept = [&placing](Extent given) { return printed_extent(given, placing); };
  if (bytes.starts_with(png_head)) return from_png(bytes, limits.pixels, kept);
  if (bytes.starts_with(jpeg_head)) return from_jpeg(bytes, limits.pixels, kept, placing.quality);
  throw Refusal(kind_of(bytes));
}

Pixels pixels_of(const Image &image) {
  const auto width = static_cast<std::size_t>(image.ref.width), height = static_cast<std::size_t>(image.ref.height);
  if (image.coding == Image::Coding::deflated)
    return {image.ref.width, image.ref.height, inflate_rows(image.data, width * height * 3)};
  auto pixels = decode_jpeg(image.data, static_cast<long long>(width * height), all_of_it).reading.pixels;
  if (Extent{pixels.width, pixels.height} != Extent{image.ref.width, image.ref.height})
    throw std::logic_error("a picture whose pixels do not fill its size");
  return pixels;
}

} // namespace strakebook::media
