#include "strakebook/paper/typeset/drawing_lane.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "strakebook/paper/typeset/drawing_collision.h"

using namespace strakebook;
using typeset::LaneLabel;
using typeset::pushed_apart;

namespace {
const typeset::Lane lane{{0}, {200}, {2}, {10}};
}

TEST_CASE("labels that do not touch stay where they are") {
  const std::vector<LaneLabel> labels{{{10}, {20}}, {{32}, {20}}, {{100}, {20}}};
  const auto lefts = pushed_apart(labels, lane);
  CHECK(lefts[0].v == Approx(10));
  CHECK(lefts[1].v == Approx(32));
  CHECK(lefts[2].v == Approx(100));
}

TEST_CASE("two labels that touch are each moved by half of what is missing") {
  // 20 wide, 2 between: they need 22 from left edge to left edge and have 12.
  const auto lefts = pushed_apart(std::vector<LaneLabel>{{{50}, {20}}, {{62}, {20}}}, lane);
  CHECK(lefts[0].v == Approx(45));
  CHECK(lefts[1].v == Approx(67));
}

TEST_CASE("a cluster is pushed apart about its middle, whatever order it is given in") {
  const auto lefts = pushed_apart(std::vector<LaneLabel>{{{108}, {10}}, {{100}, {10}}, {{104}, {10}}}, lane);
  CHECK(lefts[1].v == Approx(92));
  CHECK(lefts[2].v == Approx(104));
  CHECK(lefts[0].v == Approx(116));
}

TEST_CASE("labels are pushed back inside the lane") {
  const auto lefts = pushed_apart(std::vector<LaneLabel>{{{-4}, {10}}, {{184}, {10}}, {{195}, {10}}}, lane);
  CHECK(lefts[0].v == Approx(0));
  CHECK(lefts[1].v == Approx(178));
  CHECK(lefts[2].v == Approx(190));
}

TEST_CASE("no label is moved further than the lane allows, and what still touches can be seen") {
  const std::vector<LaneLabel> just{{{50}, {20}}, {{52}, {20}}}, over{{{50}, {20}}, {{50}, {30}}, {{50}, {40}}};
  const auto apart = pushed_apart(just, lane);
  CHECK(apart[1].v - apart[0].v == Approx(22));
  const auto stuck = pushed_apart(over, lane);
  std::vector<base::Rect> boxes;
  for (std::size_t i = 0; i < over.size(); ++i) {
    CHECK(std::abs(stuck[i].v - 50) <= 10 + 1e-9);
    boxes.push_back({{stuck[i], {0}}, {over[i].width, {8}}});
  }
  CHECK_FALSE(typeset::overlaps(boxes, {0.2}).empty());
}

TEST_CASE("boxes may share 0.2 pt and no more") {
  const auto pair = [](double second) {
    return std::vector<base::Rect>{{{{0}, {0}}, {{20}, {8}}}, {{{second}, {3}}, {{20}, {8}}}};
  };
  CHECK(typeset::overlaps(pair(19.85), {0.2}).empty());
  const auto found = typeset::overlaps(pair(19.7), {0.2});
  REQUIRE(found.size() == 1);
  CHECK(found[0].by.v == Approx(0.3));
  CHECK(typeset::outside(pair(19.7), {{{0}, {0}}, {{39.6}, {11}}}, {0.2}).empty());
  CHECK(typeset::outside(pair(19.7), {{{0}, {0}}, {{39.4}, {11}}}, {0.2}) == std::vector<std::size_t>{1});
}
