#include <catch2/catch.hpp>

#include <string_view>

#include "strakebook/paper/media/exif.h"
#include "strakebook/paper/media/pixels.h"

using namespace strakebook::media;
using namespace std::string_view_literals;

namespace {

/// abc / def with one letter for the three parts of a pixel; the answer as rows joined by a slash.
std::string seen(int orientation) {
  Pixels stored{3, 2, {}};
  for (char letter : "abcdef"sv)
    stored.rgb += std::string(3, letter);
  const auto pixels = upright(stored, orientation);
  std::string rows;
  for (int y = 0; y < pixels.height; ++y) {
    if (y > 0)
      rows += '/';
    for (int x = 0; x < pixels.width; ++x)
      rows += pixels.rgb.at(static_cast<std::size_t>((y * pixels.width + x) * 3));
  }
  return rows;
}

} // namespace

// What each value means: EXIF 2.32, tag 0112 (from memory).
TEST_CASE("the eight orientations") {
  CHECK(seen(1) == "abc/def");
  CHECK(seen(2) == "cba/fed");
  CHECK(seen(3) == "fed/cba");
  CHECK(seen(4) == "def/abc");
  CHECK(seen(5) == "ad/be/cf");
  CHECK(seen(6) == "da/eb/fc");
  CHECK(seen(7) == "fc/eb/da");
  CHECK(seen(8) == "cf/be/ad");
}

TEST_CASE("the orientation is read in either byte order") {
  constexpr auto big = "MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0"sv;
  constexpr auto little = "II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x08\0\0\0\0\0\0\0"sv;
  CHECK(exif_orientation(big) == 6);
  CHECK(exif_orientation(little) == 8);
}

TEST_CASE("no orientation, a damaged block or a value out of range means as stored") {
  CHECK(exif_orientation("") == 1);
  CHECK(exif_orientation("XX\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0"sv) == 1);
  CHECK(exif_orientation("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0"sv) == 1);
  CHECK(exif_orientation("MM\0*\xFF\xFF\xFF\xF0\0\x01"sv) == 1);
  CHECK(exif_orientation("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x09\0\0"sv) == 1);
}
