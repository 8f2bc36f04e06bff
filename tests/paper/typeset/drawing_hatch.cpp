#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>

#include "strakebook/paper/typeset/hatch.h"

using namespace strakebook;
using base::Point;
using style::Hatch;
using typeset::hatch_lines;

namespace {

const std::array<Point, 4> square{{{{10}, {10}}, {{30}, {10}}, {{30}, {30}}, {{10}, {30}}}};
/// A plate with a pit: the notch comes down to y = 22 at x = 20.
const std::array<Point, 5> notched{{{{10}, {10}}, {{20}, {22}}, {{30}, {10}}, {{30}, {30}}, {{10}, {30}}}};

bool in_notch(Point p) { return p.y.v < 22 - 1.2 * std::abs(p.x.v - 20) - 1e-9; }

Point between(const typeset::HatchLine &l, double t) {
  return {l.from.x + (l.to.x - l.from.x) * t, l.from.y + (l.to.y - l.from.y) * t};
}

} // namespace

TEST_CASE("every point of a hatch lies inside its polygon, also where the polygon is hollow") {
  const auto lines = hatch_lines(notched, Hatch::cross, {1.5});
  REQUIRE(lines.size() > 20);
  for (const auto &line : lines)
    for (int i = 0; i <= 20; ++i) {
      const Point p = between(line, i / 20.0);
      CHECK(p.x.v >= 10 - 1e-9);
      CHECK(p.x.v <= 30 + 1e-9);
      CHECK(p.y.v >= 10 - 1e-9);
      CHECK(p.y.v <= 30 + 1e-9);
      CHECK_FALSE(in_notch(p));
    }
}

TEST_CASE("the lines of a hatch fill the area: their length is area over pitch") {
  const auto total = [](const auto &polygon, Hatch hatch) {
    double sum = 0;
    for (const auto &l : hatch_lines(polygon, hatch, {0.1}))
      sum += std::hypot((l.to.x - l.from.x).v, (l.to.y - l.from.y).v);
    return sum;
  };
  CHECK(total(square, Hatch::diagonal) == Approx(400 / 0.1).epsilon(0.01));
  CHECK(total(square, Hatch::cross) == Approx(2 * 400 / 0.1).epsilon(0.01));
  CHECK(total(notched, Hatch::diagonal) == Approx((400 - 120) / 0.1).epsilon(0.01));
}

TEST_CASE("diagonal lines rise to the right and stand a pitch apart") {
  const auto lines = hatch_lines(square, Hatch::diagonal, {2});
  REQUIRE(lines.size() > 2);
  for (const auto &l : lines) CHECK((l.to.x - l.from.x).v == Approx(-(l.to.y - l.from.y).v));
  const double across = ((lines[1].from.x + lines[1].from.y) - (lines[0].from.x + lines[0].from.y)).v / std::sqrt(2.0);
  CHECK(across == Approx(2));
}

TEST_CASE("neighbours share one lattice of lines") {
  auto beside = square;
  for (auto &p : beside) p.x += base::Pt{7};
  const auto offset = [](const auto &polygon) {
    const auto first = hatch_lines(polygon, Hatch::diagonal, {2}).front();
    return std::remainder((first.from.x + first.from.y).v, 2 * std::sqrt(2.0));
  };
  CHECK(offset(square) == Approx(offset(beside)).margin(1e-9));
}

TEST_CASE("no hatch, no lines; a hatch without a pitch is refused") {
  CHECK(hatch_lines(square, Hatch::none, {2}).empty());
  CHECK_THROWS_AS(hatch_lines(square, Hatch::cross, {0}), std::invalid_argument);
}
