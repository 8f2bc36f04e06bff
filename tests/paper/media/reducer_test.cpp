#include <catch2/catch.hpp>

#include "paper/media/gate.h"
#include "paper/media/pictures.h"
#include "strakebook/paper/media/reducer.h"

using namespace strakebook;
using media::Extent;

namespace {

/// Grey levels of a picture of one row or more, reduced.
std::vector<int> reduced(Extent from, Extent to, const std::vector<int> &grey) {
  media::Reducer reducer(from, to);
  for (int y = 0; y < from.height; ++y) {
    std::vector<unsigned char> row;
    for (int x = 0; x < from.width; ++x)
      row.insert(row.end(), 3, static_cast<unsigned char>(grey.at(static_cast<std::size_t>(y * from.width + x))));
    reducer.take(row.data());
  }
  const auto pixels = std::move(reducer).pixels();
  REQUIRE(Extent{pixels.width, pixels.height} == to);
  std::vector<int> out;
  for (int y = 0; y < to.height; ++y)
    for (int x = 0; x < to.width; ++x) out.push_back(sample_of(pixels, x, y, 1));
  return out;
}

/// A frame of 79 x 39 mm at 220 pixels an inch.
media::Placing half_page() {
  constexpr double mm = 72 / 25.4;
  return {.frame = [](Extent) { return base::Size{{79 * mm}, {39 * mm}}; }, .per_inch = 220, .quality = 88};
}

} // namespace

TEST_CASE("the same size changes nothing") {
  CHECK(reduced({3, 2}, {3, 2}, {1, 2, 3, 4, 5, 255}) == std::vector{1, 2, 3, 4, 5, 255});
}

TEST_CASE("a pixel is the mean of the area that it covers") {
  CHECK(reduced({4, 2}, {2, 1}, {0, 10, 200, 210, 20, 30, 220, 230}) == std::vector{15, 215});
  // Three pixels on two: the middle one goes half to either side. (60 + 90 / 2) / 1.5 = 70, (90 / 2 + 240) / 1.5 = 190.
  CHECK(reduced({3, 1}, {2, 1}, {60, 90, 240}) == std::vector{70, 190});
  CHECK(reduced({1, 3}, {1, 2}, {60, 90, 240}) == std::vector{70, 190});
  CHECK(reduced({5, 3}, {1, 1}, std::vector<int>(15, 255)) == std::vector{255});
}

TEST_CASE("as many pixels are kept as the place on paper takes") {
  const auto placing = half_page();
  // 4:3 fills 39 mm of height: 39 / 25.4 * 220 = 337.8 pixels.
  CHECK(media::printed_extent({4000, 3000}, placing) == Extent{451, 338});
  CHECK(media::pixels_per_inch({4000, 3000}, {451, 338}, placing) == 220);
  // 4:1 fills 79 mm of width: 684.3.
  CHECK(media::printed_extent({8000, 2000}, placing) == Extent{685, 172});
  CHECK(media::printed_extent({450, 337}, placing) == Extent{450, 337}); // less than the place takes
  CHECK(media::pixels_per_inch({400, 300}, {400, 300}, placing) == 195); // 300 / (39 / 25.4) = 195.4
  CHECK(media::printed_extent({30000, 1}, placing) == Extent{685, 1});
}

TEST_CASE("a large JPEG comes through reduced, coded anew, and like itself") {
  const auto file = pictures::jpeg(1600, 1200, {}, [](int x, int y, int component) {
    return 60 + x * 60 / 1600 + y * 60 / 1200 + 10 * component;
  });
  const Gate gate(file, "p", {}, half_page());
  REQUIRE(gate.image);
  CHECK(gate.image->given == Extent{1600, 1200});
  CHECK(Extent{gate.image->ref.width, gate.image->ref.height} == Extent{451, 338});
  CHECK(gate.image->coding == media::Image::Coding::jpeg);
  CHECK(std::abs(sample_of(gate.pixels, 225, 169, 0) - 120) <= 3);
  CHECK(std::abs(sample_of(gate.pixels, 450, 337, 2) - 200) <= 3);
  CHECK(gate.image->data.size() < 40'000);
}

TEST_CASE("every orientation keeps the upright size that its place asks for") {
  const int orientation = GENERATE(1, 2, 3, 4, 5, 6, 7, 8);
  const auto file = pictures::jpeg(800, 400, {.components = 3, .progressive = false, .orientation = orientation, .comment = {}},
                                   [](int, int, int) { return 90; });
  const Gate gate(file, "p", {}, half_page());
  REQUIRE(gate.image);
  const bool lies = orientation <= 4;
  CHECK(gate.image->given == (lies ? Extent{800, 400} : Extent{400, 800}));
  CHECK(Extent{gate.image->ref.width, gate.image->ref.height} == (lies ? Extent{676, 338} : Extent{169, 338}));
  CHECK(gate.image->data.find("GPS") == std::string::npos);
}
