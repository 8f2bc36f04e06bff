#include <catch2/catch.hpp>

#include <cstdlib>
#include <string_view>

#include "paper/media/gate.h"
#include "paper/media/pictures.h"
#include "strakebook/paper/media/jpeg_segments.h"

using pictures::jpeg;
using pictures::slope;
using namespace std::string_view_literals;

namespace {

constexpr int width = 24, height = 16;

std::string plain() { return jpeg(width, height, {}, slope); }

/// The largest difference from `slope` over the picture; chroma is stored at half size, hence not nought.
int worst_difference(const strakebook::media::Pixels &pixels) {
  int worst = 0;
  for (int y = 0; y < pixels.height; ++y)
    for (int x = 0; x < pixels.width; ++x)
      for (int c = 0; c < 3; ++c)
        worst = std::max(worst, std::abs(sample_of(pixels, x, y, c) - slope(x, y, c)));
  return worst;
}

} // namespace

TEST_CASE("a JPEG comes through decoded, with its own data for passing on") {
  const bool progressive = GENERATE(false, true);
  const Gate gate(jpeg(
      width, height, {.components = 3, .progressive = progressive, .orientation = 0, .comment = {}}, slope));
  REQUIRE(gate.image);
  CHECK(gate.image->ref.width == width);
  CHECK(gate.image->ref.height == height);
  CHECK(worst_difference(gate.pixels) <= 4);
  CHECK(gate.image->components == 3);
  const Gate again(gate.image->data);
  REQUIRE(again.image);
  CHECK(again.image->data == gate.image->data); // it was passed on, not coded anew
}

TEST_CASE("metadata do not come through") {
  const auto file = jpeg(
      width, height, {.components = 3, .progressive = false, .orientation = 1, .comment = "by N. N."}, slope);
  REQUIRE(file.find("GPS") != std::string::npos);
  REQUIRE(file.find("by N. N.") != std::string::npos);
  const Gate gate(file + "a second picture after the end");
  REQUIRE(gate.image);
  for (auto mark : {"GPS"sv, "Exif"sv, "by N. N."sv, "JFIF"sv, "second"sv})
    CHECK(gate.image->data.find(mark) == std::string::npos);
  CHECK(std::string_view(gate.image->data).ends_with("\xFF\xD9"));
}

TEST_CASE("whatever an EXIF block says, the picture comes through, lying or standing") {
  const auto whole = jpeg(width, height, {.components = 3, .progressive = false, .orientation = 6, .comment = {}}, slope);
  const std::string_view last = "GPS 5";
  for (auto at = whole.find("Exif"); at < whole.find(last) + last.size(); ++at)
    for (const char wrong : {'\x00', '\x7F', '\xFF'}) {
      INFO(at);
      auto hostile = whole;
      hostile[at] = wrong;
      const Gate gate(hostile);
      REQUIRE(gate.image);
      CHECK(gate.image->given.width * gate.image->given.height == width * height);
      CHECK(gate.image->data.find("GPS") == std::string::npos);
    }
}

TEST_CASE("a JPEG turned by EXIF comes through upright, coded anew") {
  const Gate stored(
      jpeg(width, height, {.components = 3, .progressive = false, .orientation = 1, .comment = {}}, slope));
  const Gate turned(
      jpeg(width, height, {.components = 3, .progressive = false, .orientation = 6, .comment = {}}, slope));
  REQUIRE(stored.image);
  REQUIRE(turned.image);
  CHECK(turned.image->ref.width == height);
  CHECK(turned.image->ref.height == width);
  CHECK(turned.image->data.find("GPS") == std::string::npos);
  CHECK(std::abs(sample_of(turned.pixels, height - 1, 0, 0) - sample_of(stored.pixels, 0, 0, 0)) <= 4);
  CHECK(std::abs(sample_of(turned.pixels, 0, 0, 1) - sample_of(stored.pixels, 0, height - 1, 1)) <= 4);
}

TEST_CASE("grey passes as grey; inks become RGB") {
  const Gate grey(
      jpeg(width, height, {.components = 1, .progressive = false, .orientation = 0, .comment = {}}, slope));
  REQUIRE(grey.image);
  CHECK(grey.image->components == 1);
  CHECK(std::abs(sample_of(grey.pixels, 5, 5, 2) - slope(5, 5, 0)) <= 2);

  // Inverted, as files with an Adobe marker are: 255 is no ink.
  const auto inks = [](int, int, int component) { return component == 0 ? 0 : 255; };
  const Gate cyan(
      jpeg(width, height, {.components = 4, .progressive = false, .orientation = 0, .comment = {}}, inks));
  REQUIRE(cyan.image);
  CHECK(cyan.image->components == 3);
  CHECK(sample_of(cyan.pixels, 3, 3, 0) <= 3);
  CHECK(sample_of(cyan.pixels, 3, 3, 1) >= 252);
}

TEST_CASE("a JPEG cut anywhere is refused, also with its end marker put back") {
  const auto whole = plain();
  for (std::size_t length = 3; length < whole.size(); length += 7) {
    INFO(length);
    CHECK_THAT(Gate(whole.substr(0, length)).refusal(), Catch::Contains("JPEG, "));
    CHECK_THAT(Gate(whole.substr(0, length) + "\xFF\xD9").refusal(), Catch::Contains("JPEG, "));
  }
}

TEST_CASE("a JPEG with a false size is refused") {
  CHECK_THAT(Gate(pictures::jpeg_of_size(plain(), 60000, 60000)).refusal(),
             Catch::Contains("60000 x 60000 pixels"));
  CHECK_THAT(Gate(pictures::jpeg_of_size(plain(), width, 2 * height)).refusal(), Catch::Contains("JPEG, "));
}

TEST_CASE("segments that do not follow each other are refused") {
  CHECK_THROWS_WITH(strakebook::media::walk_segments("\xFF\xD8\xFF\xE1\x40\x00xx"sv),
                    Catch::Contains("past the end"));
  CHECK_THROWS_WITH(strakebook::media::walk_segments("\xFF\xD8zz\xFF\xD9"sv),
                    Catch::Contains("between its segments"));
}
