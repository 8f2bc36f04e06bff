#include <catch2/catch.hpp>

#include "paper/media/gate.h"
#include "paper/media/pictures.h"

using pictures::Kind;

namespace {

std::vector<int> pixel(const Gate &gate, int x, int y) {
  return {sample_of(gate.pixels, x, y, 0), sample_of(gate.pixels, x, y, 1), sample_of(gate.pixels, x, y, 2)};
}

std::string small_png() { return pictures::png(Kind::rgb, 2, 1, {10, 20, 30, 200, 210, 220}); }

} // namespace

TEST_CASE("a PNG comes through as RGB with its digest, whatever its name") {
  const Gate gate(small_png(), "photos/named.jpg");
  REQUIRE(gate.image);
  CHECK(gate.sink.all().empty());
  CHECK(gate.image->ref.width == 2);
  CHECK(gate.image->ref.height == 1);
  CHECK(gate.image->ref.digest.size() == 64);
  CHECK(pixel(gate, 1, 0) == std::vector{200, 210, 220});
  CHECK(gate.image->coding == strakebook::media::Image::Coding::deflated);
}

TEST_CASE("every kind of PNG becomes 8-bit RGB on white") {
  const Gate grey(pictures::png(Kind::grey, 2, 1, {7, 250}));
  REQUIRE(grey.image);
  CHECK(pixel(grey, 0, 0) == std::vector{7, 7, 7});

  const Gate deep(pictures::png(Kind::rgb16, 1, 2, {0, 255, 0, 255, 0, 255}));
  REQUIRE(deep.image);
  CHECK(pixel(deep, 0, 1) == std::vector{255, 0, 255});

  const Gate palette(pictures::png(Kind::palette, 3, 1, {0, 1, 2}));
  REQUIRE(palette.image);
  CHECK(pixel(palette, 1, 0) == std::vector{255, 0, 0});

  const Gate veil(pictures::png(Kind::grey_alpha, 2, 1, {100, 255, 100, 51}));
  REQUIRE(veil.image);
  CHECK(pixel(veil, 0, 0) == std::vector{100, 100, 100});
  CHECK(pixel(veil, 1, 0) == std::vector{224, 224, 224});

  const Gate glass(pictures::png(Kind::rgba, 3, 1, {100, 0, 0, 0, 100, 0, 0, 255, 100, 0, 0, 51}));
  REQUIRE(glass.image);
  CHECK(pixel(glass, 0, 0) == std::vector{255, 255, 255});
  CHECK(pixel(glass, 1, 0) == std::vector{100, 0, 0});
  CHECK(pixel(glass, 2, 0) == std::vector{224, 204, 204}); // one fifth ink: 255 - (255 - c) / 5
}

TEST_CASE("an interlaced PNG is put together before its rows go on") {
  const auto plain = pictures::png(Kind::rgb, 9, 7, pictures::slope_samples(9, 7));
  const auto interlaced = pictures::png(Kind::rgb, 9, 7, pictures::slope_samples(9, 7), true);
  REQUIRE(plain != interlaced);
  const Gate one(plain), other(interlaced);
  REQUIRE(other.image);
  CHECK(other.pixels.rgb == one.pixels.rgb);
}

TEST_CASE("a PNG is turned as its eXIf says, before or behind its pixels") {
  const auto stored = pictures::png(Kind::rgb, 4, 2, pictures::slope_samples(4, 2));
  for (const auto *before : {"IDAT", "IEND"}) {
    INFO(before);
    const Gate gate(pictures::with_exif(stored, before, 6));
    REQUIRE(gate.image);
    CHECK(gate.image->given == strakebook::media::Extent{2, 4});
    CHECK(pixel(gate, 1, 0) == std::vector{pictures::slope(0, 0, 0), pictures::slope(0, 0, 1), pictures::slope(0, 0, 2)});
    CHECK(gate.image->data.find("GPS") == std::string::npos);
  }
}

TEST_CASE("a PNG cut anywhere is refused") {
  const auto whole = small_png();
  for (std::size_t length = 8; length < whole.size(); ++length) {
    INFO(length);
    CHECK_THAT(Gate(whole.substr(0, length)).refusal(), Catch::Contains("PNG, "));
  }
  CHECK_THAT(Gate(whole.substr(0, whole.size() - 1)).refusal(), Catch::Contains("ends too early"));
}

TEST_CASE("a PNG with a wrong checksum is refused") {
  auto damaged = small_png();
  const auto data = damaged.find("IDAT");
  REQUIRE(data != std::string::npos);
  damaged[data + 6] = static_cast<char>(damaged[data + 6] ^ 1);
  CHECK_THAT(Gate(damaged).refusal(), Catch::Contains("PNG, IDAT"));
}

TEST_CASE("a PNG too large by its header is refused before it is decoded") {
  const auto bomb = pictures::png_of_size(small_png(), 30000, 30000);
  CHECK_THAT(Gate(bomb).refusal(), Catch::Contains("30000 x 30000 pixels, more than 60 million"));
}

TEST_CASE("the pixel limit itself is admitted, one more is not") {
  CHECK(Gate(small_png(), "p", {.pixels = 2, .bytes = 1000, .apart = {}}).image);
  CHECK_THAT(Gate(small_png(), "p", {.pixels = 1, .bytes = 1000, .apart = {}}).refusal(), Catch::Contains("2 x 1 pixels"));
}

TEST_CASE("the byte limit itself is admitted, one less is not") {
  const auto bytes = small_png();
  CHECK(Gate(bytes, "p", {.pixels = 9, .bytes = bytes.size(), .apart = {}}).image);
  CHECK_THAT(Gate(bytes, "p", {.pixels = 9, .bytes = bytes.size() - 1, .apart = {}}).refusal(),
             Catch::Contains("a file of"));
}

TEST_CASE("what is no picture is named") {
  CHECK_THAT(Gate("").refusal(), Catch::Contains("photos/p1.jpg does not decode cleanly: an empty file"));
  CHECK_THAT(Gate("....ftypheic....").refusal(), Catch::Contains("HEIC"));
  CHECK_THAT(Gate("hello").refusal(), Catch::Contains("no picture"));
}

TEST_CASE("a wrong checksum in a chunk that holds no pixels is refused too") {
  auto damaged = small_png();
  const std::string time("\0\0\0\x07tIME\x07\xEA\x0A\x15\x09\x00\x00" "bad!", 19);
  damaged.insert(damaged.find("IDAT") - 4, time);
  CHECK_THAT(Gate(damaged).refusal(), Catch::Contains("PNG, tIME"));
}
