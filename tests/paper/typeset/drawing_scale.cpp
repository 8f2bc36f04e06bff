#include "strakebook/paper/typeset/drawing_scale.h"

#include <array>
#include <catch2/catch.hpp>
#include <stdexcept>

#include "support/paper_style.h"

using namespace strakebook;
using content::Scale;

namespace {

style::Style look() {
  auto s = paper_test::make_style();
  s.measures["left"] = {30};
  s.measures["right"] = {20};
  s.measures["top"] = {15};
  s.measures["bottom"] = {25};
  s.measures["tall"] = {60};
  s.measures["station"] = {10};
  return s;
}

content::Drawing padded() {
  content::Drawing d;
  d.x1 = 18;
  d.y1 = 6;
  d.y = {Scale::Rule::fill, "tall"};
  d.pad_left = "left";
  d.pad_right = "right";
  d.pad_top = "top";
  d.pad_bottom = "bottom";
  return d;
}

} // namespace

TEST_CASE("a drawing that fills takes the width less its pads, and the height of its measure and its pads") {
  const auto s = look();
  const auto scale = typeset::scaled(padded(), s, {410});
  CHECK(scale.size.width.v == Approx(410));
  CHECK(scale.size.height.v == Approx(15 + 60 + 25));
  CHECK(scale.points_x == Approx((410 - 30 - 20) / 18.0));
  CHECK(scale.points_y == Approx(10));
}

TEST_CASE("y is up in data and down on paper") {
  const auto s = look();
  const auto scale = typeset::scaled(padded(), s, {410});
  const auto foot = scale.place({0, 0}), top = scale.place({18, 6});
  CHECK(foot.x.v == Approx(30));
  CHECK(foot.y.v == Approx(75));
  CHECK(top.x.v == Approx(390));
  CHECK(top.y.v == Approx(15));
}

TEST_CASE("a named scale decides the width itself; y as x takes as much") {
  const auto s = look();
  auto d = padded();
  d.x = {Scale::Rule::named, "station"};
  d.y = {Scale::Rule::as_x, ""};
  const auto scale = typeset::scaled(d, s, {410});
  CHECK(scale.size.width.v == Approx(30 + 180 + 20));
  CHECK(scale.size.height.v == Approx(15 + 60 + 25));
}

TEST_CASE("data may run from right to left") {
  const auto s = look();
  auto d = padded();
  std::swap(d.x0, d.x1);
  for (const auto rule : {Scale::Rule::fill, Scale::Rule::named}) {
    d.x = {rule, "station"};
    const auto scale = typeset::scaled(d, s, {410});
    CHECK(scale.place({18, 0}).x.v == Approx(30));
    CHECK(scale.place({0, 0}).x.v == Approx(scale.area.right().v));
  }
}

TEST_CASE("scale rules that say nothing are refused") {
  const auto s = look();
  auto no_range = padded();
  no_range.x1 = no_range.x0;
  CHECK_THROWS_AS(typeset::scaled(no_range, s, {410}), std::invalid_argument);
  auto x_as_x = padded();
  x_as_x.x.rule = Scale::Rule::as_x;
  CHECK_THROWS_AS(typeset::scaled(x_as_x, s, {410}), std::invalid_argument);
  CHECK_THROWS_AS(typeset::scaled(padded(), s, {50}), std::invalid_argument);
  CHECK_NOTHROW(typeset::scaled(padded(), s, {51}));
}

TEST_CASE("panels of one figure share the least scale of those that fill") {
  const auto s = look();
  auto longer = padded(), named = padded();
  const auto d = padded();
  longer.x1 = 36;
  longer.y1 = 12;
  named.x = {Scale::Rule::named, "station"};
  const std::array drawings{&d, &std::as_const(longer), &std::as_const(named)};
  const std::array<base::Pt, 3> widths{{{410}, {410}, {410}}};
  const auto limit = typeset::common_limit(drawings, widths, s);
  CHECK(limit.x == Approx(10));
  CHECK(limit.y == Approx(5));
  CHECK(typeset::scaled(d, s, {410}, limit).size.width.v == Approx(30 + 180 + 20));
}
