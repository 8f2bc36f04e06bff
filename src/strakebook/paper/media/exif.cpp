#include "strakebook/paper/media/exif.h"

#include <cstdint>

namespace strakebook::media {

namespace {

/// Reads numbers of a TIFF block in its own byte order; anything outside the block reads as 0.
struct TiffReader {
  std::string_view bytes;
  bool big_end_first;

  std::uint32_t number(std::size_t at, std::size_t length) const {
    if (at > bytes.size() || length > bytes.size() - at)
      return 0;
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < length; ++i)
      value = value << 8 | static_cast<unsigned char>(bytes[at + (big_end_first ? i : length - 1 - i)]);
    return value;
  }
};

constexpr std::uint32_t orientation_tag = 0x0112, short_type = 3;
constexpr std::size_t entry_size = 12;

} // namespace

int exif_orientation(std::string_view tiff) {
  if (!tiff.starts_with("II") && !tiff.starts_with("MM"))
    return 1;
  const TiffReader reader{tiff, tiff.starts_with("MM")};
  if (reader.number(2, 2) != 42)
    return 1;
  const std::size_t directory = reader.number(4, 4);
  const std::size_t entries = reader.number(directory, 2);
  for (std::size_t i = 0; i < entries; ++i) {
    const auto entry = directory + 2 + i * entry_size;
    if (reader.number(entry, 2) != orientation_tag)
      continue;
    const auto value = reader.number(entry + 8, 2);
    const bool known = reader.number(entry + 2, 2) == short_type && value >= 1 && value <= 8;
    return known ? static_cast<int>(value) : 1;
  }
  return 1;
}

} // namespace strakebook::media
