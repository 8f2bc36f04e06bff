#include <catch2/catch.hpp>

#include <string_view>

#include "paper/output/sample.h"
#include "strakebook/paper/media/png.h"
#include "strakebook/paper/output/output.h"

using namespace sample;

namespace {

strakebook::media::Pixels drawn(const page::Document &document, std::size_t page, double dpi) {
  return strakebook::media::decode_png(strakebook::output::png(document, page, images(), dpi), 10'000'000,
                                       strakebook::media::all_of_it)
      .pixels;
}

/// The darkest part of any pixel in a box of the page, in points, at 72 dpi: 255 is untouched paper.
int darkest(const strakebook::media::Pixels &pixels, int left, int top, int right, int bottom) {
  int least = 255;
  for (int y = top; y < bottom; ++y)
    for (int x = left * 3; x < right * 3; ++x)
      least = std::min<int>(least, static_cast<unsigned char>(
                                       pixels.rgb.at(static_cast<std::size_t>(y * pixels.width * 3 + x))));
  return least;
}

} // namespace

TEST_CASE("the preview is as large as the sheet at the resolution asked") {
  const auto portrait = drawn(document(), 0, 100);
  CHECK(portrait.width == 827); // 595.28 / 72 * 100, whole pixels
  CHECK(portrait.height == 1170);
  CHECK(drawn(document(), 1, 72).width == 842);
}

TEST_CASE("ink lies where the page has it and nowhere else") {
  const auto pixels = drawn(document(), 0, 72);
  CHECK(darkest(pixels, 0, 0, 595, 85) == 255);
  CHECK(darkest(pixels, 68, 88, 180, 102) < 60); // the heading, upright on its baseline
  CHECK(darkest(pixels, 66, 104, 300, 114) == 255);
  CHECK(darkest(pixels, 52, 372, 62, 400) < 160); // the turned label reads upwards from 400
  CHECK(darkest(pixels, 52, 402, 62, 430) == 255);
  CHECK(darkest(pixels, 180, 225, 190, 235) < 120); // the middle of the line
}

TEST_CASE("a picture fills its box, the top left corner being its first pixel") {
  const auto pixels = drawn(document(), 0, 72);
  const auto at = [&pixels](int x, int y, int part) {
    return static_cast<unsigned char>(
        pixels.rgb.at(static_cast<std::size_t>((y * pixels.width + x) * 3 + part)));
  };
  CHECK(at(70, 302, 0) < 20);
  CHECK(at(70, 302, 1) < 20);
  CHECK(at(226, 302, 0) > 200);
  CHECK(at(70, 418, 1) > 200);
  CHECK(at(229, 302, 0) == 255);
}

TEST_CASE("the same page gives the same preview") {
  CHECK(strakebook::output::png(document(), 0, images(), 50) ==
        strakebook::output::png(document(), 0, images(), 50));
}

TEST_CASE("a preview that cannot be drawn throws") {
  auto broken = document();
  broken.fonts[0].bytes = std::make_shared<const std::string>("no font");
  CHECK_THROWS_AS(drawn(broken, 0, 72), std::runtime_error);
  CHECK_THROWS_AS(drawn(document(), 0, 1e5), std::runtime_error);
  CHECK_THROWS_AS(drawn(document(), 0, 0), std::logic_error);
  CHECK_THROWS_AS(drawn(document(), 0, 2e5), std::logic_error);
  CHECK_THROWS_AS(drawn(document(), 2, 72), std::logic_error);
}
