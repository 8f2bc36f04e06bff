#include <catch2/catch.hpp>

#include "drawing_support.h"

// What a label does where there is no room, and what it stands on.

using namespace drawing_test;
using content::Anchor;
using content::Label;
using content::Level;

namespace {

Label yielding(double x, double y, const std::string &text) {
  Label l;
  l.at = {x, y};
  l.text = content::plain(text);
  l.anchor = Anchor::left;
  l.level = Level::middle;
  l.stays = true;
  l.yields = true;
  return l;
}

std::vector<std::string> words(Desk &desk, const content::Drawing &d) {
  std::vector<std::string> out;
  for (const auto &run : all<page::Run>(desk.draw(d))) out.push_back(run.text);
  return out;
}

using Words = std::vector<std::string>;

} // namespace

TEST_CASE("a label that yields never hides a sign, and goes to its other place where that is free") {
  Desk desk;
  desk.look.meanings["mark"] = {};
  desk.look.meanings["mark"].fill = "ink";
  desk.look.meanings["mark"].shape = style::Shape::dot;
  desk.look.meanings["mark"].shape_size = {4};
  auto d = board();
  d.elements = {content::Spot{{20, 25}, "mark", {}}, content::Spot{{26, 25}, "mark", {}}, yielding(20, 25, "5.8")};
  CHECK(words(desk, d).empty());
  std::get<Label>(d.elements[2]).instead = content::XY{20, 40};
  CHECK(words(desk, d) == Words{"5.8"});
  d.elements.emplace_back(content::Spot{{20, 40}, "mark", {}});
  CHECK(words(desk, d).empty());
  CHECK(desk.sink.ok());
}

TEST_CASE("of labels that cannot all stand, those said first stay; one that stays is not moved in its lane") {
  Desk desk;
  auto d = board();
  d.elements = {yielding(30, 25, "4.9"), yielding(28, 25, "5.1"), yielding(70, 25, "5.3")};
  CHECK(words(desk, d) == Words{"4.9", "5.3"});
  const auto first = all<page::Run>(desk.draw(d)).at(0);
  CHECK(first.origin.x.v == Approx(20 + 30 + 3)); // label-pad beside its place
}

TEST_CASE("a flag has its point at the side that it leads to, half as long as it is high") {
  Desk desk;
  auto d = board();
  auto flag = yielding(50, 25, "7");
  for (const auto ground : {Label::Ground::flag_left, Label::Ground::flag_right, Label::Ground::flag}) {
    flag.ground = ground;
    d.elements = {flag};
    const auto set = desk.draw(d);
    const auto path = all<page::Path>(set).at(0);
    const auto run = all<page::Run>(set).at(0);
    REQUIRE(path.fill);
    REQUIRE(path.stroke);
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    for (const auto &step : path.steps) {
      if (std::holds_alternative<page::Close>(step)) continue;
      const auto at = std::holds_alternative<page::Move>(step) ? std::get<page::Move>(step).to : std::get<page::Line>(step).to;
      left = std::min(left, at.x.v), right = std::max(right, at.x.v), top = std::min(top, at.y.v), bottom = std::max(bottom, at.y.v);
    }
    const double point = (bottom - top) / 2, pad = 1;
    CHECK(left == Approx(run.origin.x.v - pad - (ground == Label::Ground::flag_left ? point : 0)));
    CHECK(right == Approx((run.origin.x + width_of(run)).v + pad + (ground == Label::Ground::flag_right ? point : 0)));
  }
}
