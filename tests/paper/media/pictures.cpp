#include "paper/media/pictures.h"

#include <cstdio>
#include <cstdlib>
#include <jpeglib.h>
#include <png.h>
#include <stdexcept>
#include <string_view>
#include <zlib.h>

namespace pictures {

namespace {

using namespace std::string_view_literals;

struct PngForm {
  int colour_type, depth, samples;
};

PngForm form_of(Kind kind) {
  switch (kind) {
  case Kind::grey:
    return {PNG_COLOR_TYPE_GRAY, 8, 1};
  case Kind::grey_alpha:
    return {PNG_COLOR_TYPE_GRAY_ALPHA, 8, 2};
  case Kind::rgb:
    return {PNG_COLOR_TYPE_RGB, 8, 3};
  case Kind::rgba:
    return {PNG_COLOR_TYPE_RGB_ALPHA, 8, 4};
  case Kind::rgb16:
    return {PNG_COLOR_TYPE_RGB, 16, 3};
  case Kind::palette:
    return {PNG_COLOR_TYPE_PALETTE, 8, 1};
  }
  throw std::logic_error("kind");
}

void append(png_structp png, png_bytep bytes, std::size_t count) {
  static_cast<std::string *>(png_get_io_ptr(png))->append(reinterpret_cast<const char *>(bytes), count);
}
void nothing(png_structp) {}

std::string big_endian(std::uint32_t value) {
  std::string bytes;
  for (int shift = 24; shift >= 0; shift -= 8)
    bytes += static_cast<char>(value >> shift & 0xFF);
  return bytes;
}

std::string exif(int orientation) {
  std::string block("Exif\0\0MM\0*\0\0\0\x08\0\x02", 16);
  block +=
      std::string("\x01\x12\0\x03\0\0\0\x01\0", 9) + static_cast<char>(orientation) + std::string(2, '\0');
  block += std::string("\x82\x98\0\x02\0\0\0\x05\0\0\0\x26\0\0\0\0", 16) + "GPS 5";
  return block;
}

} // namespace

std::string png(Kind kind, int width, int height, const std::vector<int> &samples, bool interlaced) {
  const auto form = form_of(kind);
  std::string file;
  auto *writer = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  auto *info = png_create_info_struct(writer);
  png_set_write_fn(writer, &file, append, nothing);
  png_set_IHDR(writer, info, static_cast<png_uint_32>(width), static_cast<png_uint_32>(height), form.depth,
               form.colour_type, interlaced ? PNG_INTERLACE_ADAM7 : PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  const png_color colours[] = {{0, 0, 0}, {255, 0, 0}, {255, 255, 255}};
  if (kind == Kind::palette)
    png_set_PLTE(writer, info, colours, 3);
  png_write_info(writer, info);
  std::vector<std::string> rows(static_cast<std::size_t>(height));
  std::size_t at = 0;
  for (auto &row : rows)
    for (int i = 0; i < width * form.samples; ++i, ++at)
      row += std::string(static_cast<std::size_t>(form.depth / 8), static_cast<char>(samples.at(at)));
  for (int pass = png_set_interlace_handling(writer); pass > 0; --pass)
    for (const auto &row : rows)
      png_write_row(writer, reinterpret_cast<png_const_bytep>(row.data()));
  png_write_end(writer, info);
  png_destroy_write_struct(&writer, &info);
  return file;
}

std::string jpeg(int width, int height, const JpegForm &form,
                 const std::function<int(int, int, int)> &sample) {
  jpeg_compress_struct writer{};
  jpeg_error_mgr errors{};
  writer.err = jpeg_std_error(&errors);
  jpeg_create_compress(&writer);
  unsigned char *bytes = nullptr;
  unsigned long size = 0;
  jpeg_mem_dest(&writer, &bytes, &size);
  writer.image_width = static_cast<JDIMENSION>(width);
  writer.image_height = static_cast<JDIMENSION>(height);
  writer.input_components = form.components;
  writer.in_color_space = form.components == 1 ? JCS_GRAYSCALE : form.components == 3 ? JCS_RGB : JCS_CMYK;
  jpeg_set_defaults(&writer);
  jpeg_set_quality(&writer, 100, TRUE);
  if (form.progressive)
    jpeg_simple_progression(&writer);
  jpeg_start_compress(&writer, TRUE);
  const auto mark = [&writer](int marker, const std::string &body) {
    jpeg_write_marker(&writer, marker, reinterpret_cast<const JOCTET *>(body.data()),
                      static_cast<unsigned>(body.size()));
  };
  if (form.orientation != 0)
    mark(JPEG_APP0 + 1, exif(form.orientation));
  if (!form.comment.empty())
    mark(JPEG_COM, form.comment);
  for (int y = 0; y < height; ++y) {
    std::string row;
    for (int x = 0; x < width; ++x)
      for (int c = 0; c < form.components; ++c)
        row += static_cast<char>(sample(x, y, c));
    auto *line = reinterpret_cast<JSAMPROW>(row.data());
    jpeg_write_scanlines(&writer, &line, 1);
  }
  jpeg_finish_compress(&writer);
  std::string file(reinterpret_cast<const char *>(bytes), size);
  jpeg_destroy_compress(&writer);
  std::free(bytes);
  return file;
}

int slope(int x, int y, int component) { return 40 + 3 * x + 2 * y + 10 * component; }

std::vector<int> slope_samples(int width, int height) {
  std::vector<int> samples;
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x)
      for (int component = 0; component < 3; ++component)
        samples.push_back(slope(x, y, component));
  return samples;
}

std::string with_exif(std::string png, const std::string &before, int orientation) {
  const auto block = exif(orientation).substr(6); // from the byte order on: a PNG has no "Exif" head
  const auto body = "eXIf" + block;
  const auto checksum = crc32(0, reinterpret_cast<const Bytef *>(body.data()), static_cast<uInt>(body.size()));
  return png.insert(png.find(before) - 4, big_endian(static_cast<std::uint32_t>(block.size())) + body +
                                              big_endian(static_cast<std::uint32_t>(checksum)));
}

std::string png_of_size(std::string png, std::uint32_t width, std::uint32_t height) {
  constexpr std::size_t type_at = 12, width_at = 16, checksum_at = 29;
  png.replace(width_at, 8, big_endian(width) + big_endian(height));
  const auto *covered = reinterpret_cast<const Bytef *>(png.data()) + type_at;
  png.replace(checksum_at, 4,
              big_endian(static_cast<std::uint32_t>(crc32(0, covered, checksum_at - type_at))));
  return png;
}

std::string jpeg_of_size(std::string jpeg, int width, int height) {
  const auto frame = jpeg.find("\xFF\xC0\x00\x11\x08"sv);
  if (frame == std::string::npos)
    throw std::logic_error("no baseline frame");
  jpeg.replace(frame + 5, 4, big_endian(static_cast<std::uint32_t>(height << 16 | width)));
  return jpeg;
}

} // namespace pictures
