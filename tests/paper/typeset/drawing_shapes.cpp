#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "drawing_support.h"
#include "strakebook/paper/typeset/signs.h"

using namespace drawing_test;
using style::Shape;

namespace {

struct Reach {
  double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
  void operator()(base::Point p) {
    left = std::min(left, p.x.v);
    right = std::max(right, p.x.v);
    top = std::min(top, p.y.v);
    bottom = std::max(bottom, p.y.v);
  }
  void operator()(const page::Move &s) { (*this)(s.to); }
  void operator()(const page::Line &s) { (*this)(s.to); }
  void operator()(const page::Curve &s) { (*this)(s.to); }
  void operator()(const page::Close &) {}
};

Reach reach(const page::Path &path) {
  Reach r;
  for (const auto &step : path.steps) std::visit([&](const auto &s) { r(s); }, step);
  return r;
}

std::vector<page::Item> sign(const style::Style &look, Shape shape, std::optional<style::Tone> tone = {}) {
  style::MeaningStyle m;
  m.shape = shape;
  m.shape_size = {10};
  m.stroke = "ink";
  m.stroke_width = {0.6};
  m.fill = "white";
  std::vector<page::Item> out;
  typeset::draw_sign(m, look, {{100}, {50}}, tone, {}, "id", out);
  return out;
}

Reach reach_of(const style::Style &look, Shape shape) {
  return reach(std::get<page::Path>(sign(look, shape).at(0).what));
}

} // namespace

TEST_CASE("signs of height s: circle 0.86 s, square on its point and triangle s wide, dash and cross s") {
  const auto look = paper_test::make_style();
  const auto circle = reach_of(look, Shape::circle), square = reach_of(look, Shape::half_diamond);
  CHECK(circle.right - circle.left == Approx(8.6));
  CHECK(circle.bottom - circle.top == Approx(8.6));
  CHECK(square.right - square.left == Approx(10));
  CHECK(square.bottom - square.top == Approx(10));
  const auto triangle = reach_of(look, Shape::triangle_down);
  CHECK(triangle.right - triangle.left == Approx(10));
  CHECK(triangle.top < 50);
  CHECK(triangle.bottom > 50);
  const auto dash = reach_of(look, Shape::dash), cross = reach_of(look, Shape::cross);
  CHECK(dash.right - dash.left == Approx(10));
  CHECK(dash.bottom == Approx(50));
  CHECK(cross.bottom - cross.top == Approx(10));
  const auto tick = reach_of(look, Shape::tick);
  CHECK(tick.bottom - tick.top == Approx(10));
  CHECK(tick.right - tick.left == Approx(0));
}

TEST_CASE("the triangle stands on its point") {
  const auto look = paper_test::make_style();
  const auto path = std::get<page::Path>(sign(look, Shape::triangle_down).at(0).what);
  int low = 0;
  for (const auto &step : path.steps)
    std::visit([&](const auto &s) {
      if constexpr (!std::is_same_v<std::decay_t<decltype(s)>, page::Close> &&
                    !std::is_same_v<std::decay_t<decltype(s)>, page::Curve>)
        low += s.to.y.v > 50;
    }, step);
  CHECK(low == 1);
}

TEST_CASE("the lower half of the square is ink, unless a tone takes the whole") {
  const auto look = paper_test::make_style();
  const auto plain = sign(look, Shape::half_diamond);
  REQUIRE(plain.size() == 2);
  const auto &lower = std::get<page::Path>(plain[1].what);
  CHECK(lower.fill == page::Colour{0.1, 0.1, 0.1});
  CHECK(reach(lower).top == Approx(50));
  CHECK(reach(lower).bottom == Approx(55));
  const auto toned = sign(look, Shape::half_diamond, look.tones.at("ramp-1"));
  REQUIRE(toned.size() == 1);
  CHECK(std::get<page::Path>(toned[0].what).fill == page::Colour{0.06, 0.16, 0.22});
}

TEST_CASE("a spot keeps its paper size and takes its tone") {
  Desk desk;
  auto d = board();
  d.elements = {content::Spot{{50, 25}, "meets", "ramp-1"}};
  const auto path = all<page::Path>(desk.draw(d)).at(0);
  CHECK(reach(path).right - reach(path).left == Approx(5 * 0.86));
  CHECK((reach(path).left + reach(path).right) / 2 == Approx(70));
  CHECK(path.fill == page::Colour{0.06, 0.16, 0.22});
}

TEST_CASE("a hatched outline is filled, then hatched, then outlined; an open one is only a line") {
  Desk desk;
  auto &m = desk.look.meanings["doubler"];
  m.fill = "white";
  m.stroke = "ink";
  m.stroke_width = {0.4};
  m.hatch = style::Hatch::diagonal;
  m.hatch_pitch = {2};
  m.hatch_width = {0.3};
  m.hatch_tone = "grey";
  auto d = board();
  content::Outline box{{{10, 10}, {40, 10}, {40, 30}, {10, 30}}, true, "doubler"};
  d.elements = {box};
  auto paths = all<page::Path>(desk.draw(d));
  REQUIRE(paths.size() == 3);
  CHECK((paths[0].fill && !paths[0].stroke));
  CHECK(paths[1].stroke->width.v == Approx(0.3));
  CHECK((!paths[2].fill && paths[2].stroke->width.v == Approx(0.4)));
  CHECK(reach(paths[1]).left >= reach(paths[0]).left - 1e-9);
  CHECK(reach(paths[1]).bottom <= reach(paths[0]).bottom + 1e-9);
  box.closed = false;
  d.elements = {box};
  paths = all<page::Path>(desk.draw(d));
  REQUIRE(paths.size() == 1);
  CHECK_FALSE(paths[0].fill);
}

TEST_CASE("a span ends in ticks across it, or in heads whose points are at its ends") {
  Desk desk;
  auto d = board();
  content::Span span{{20, 25}, {80, 25}, content::Span::Ends::ticks, "outline"};
  d.elements = {span};
  auto paths = all<page::Path>(desk.draw(d));
  REQUIRE(paths.size() == 2);
  CHECK(reach(paths[1]).bottom - reach(paths[1]).top == Approx(6));
  span.ends = content::Span::Ends::arrows;
  d.elements = {span};
  paths = all<page::Path>(desk.draw(d));
  REQUIRE(paths.size() == 3);
  CHECK(reach(paths[0]).left == Approx(40 + 5));
  CHECK(reach(paths[1]).left == Approx(40));
  CHECK(reach(paths[2]).right == Approx(100));
  span.to = {26, 25};
  d.elements = {span};
  paths = all<page::Path>(desk.draw(d));
  CHECK(reach(paths[1]).right == Approx(43));
}
