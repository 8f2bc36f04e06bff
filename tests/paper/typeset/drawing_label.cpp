#include <catch2/catch.hpp>

#include "drawing_support.h"
#include "strakebook/paper/typeset/drawing_text.h"

using namespace drawing_test;
using content::Anchor;
using content::Label;
using content::Level;

namespace {

Label label(double x, double y, const std::string &text, Anchor anchor = Anchor::centre,
            Level level = Level::baseline) {
  Label l;
  l.at = {x, y};
  l.text = content::plain(text);
  l.anchor = anchor;
  l.level = level;
  return l;
}

page::Run run_of(Desk &desk, const Label &l) {
  auto d = board();
  d.elements = {l};
  const auto runs = all<page::Run>(desk.draw(d));
  REQUIRE(runs.size() == 1);
  return runs[0];
}

} // namespace

TEST_CASE("a label stands with its left end, middle or right end at its place") {
  Desk desk;
  const auto left = run_of(desk, label(50, 25, "P11", Anchor::left));
  const auto centre = run_of(desk, label(50, 25, "P11"));
  const auto right = run_of(desk, label(50, 25, "P11", Anchor::right));
  const double width = width_of(left).v;
  CHECK(left.origin.x.v == Approx(70));
  CHECK(centre.origin.x.v == Approx(70 - width / 2));
  CHECK(right.origin.x.v == Approx(70 - width));
  CHECK(left.origin.y.v == Approx(45));
}

TEST_CASE("a label stands above, below or beside its place by the gap, measured from its capitals") {
  Desk desk;
  const double cap = typeset::cap_height(desk.look.text["figure-label"], desk.fonts).v;
  CHECK(run_of(desk, label(50, 25, "4.0", Anchor::centre, Level::above)).origin.y.v == Approx(45 - 3));
  CHECK(run_of(desk, label(50, 25, "4.0", Anchor::centre, Level::below)).origin.y.v == Approx(45 + 3 + cap));
  const auto beside = run_of(desk, label(50, 25, "4.0", Anchor::left, Level::middle));
  CHECK(beside.origin.x.v == Approx(70 + 3));
  CHECK(beside.origin.y.v == Approx(45 + cap / 2));
}

TEST_CASE("a status word reads upwards, turned about its place") {
  Desk desk;
  auto l = label(50, 0, "no echo", Anchor::left, Level::middle);
  l.upwards = true;
  const auto run = run_of(desk, l);
  const double cap = typeset::cap_height(desk.look.text["figure-label"], desk.fonts).v;
  CHECK_FALSE(run.upright);
  CHECK(run.origin.x.v == Approx(70 + cap / 2));
  CHECK(run.origin.y.v == Approx(70 - 3));
}

TEST_CASE("a label carries its anchor, its link and its white ground") {
  Desk desk;
  auto l = label(50, 25, "PW 9");
  l.id = "map/PW 9";
  l.target = "mark/PW 9";
  l.ground = Label::Ground::chip;
  auto d = board();
  d.elements = {l};
  const auto set = desk.draw(d);
  REQUIRE(set.items.size() == 4);
  CHECK(std::get<page::Path>(set.items[0].what).fill == page::Colour{1, 1, 1});
  CHECK(set.items[0].id == "figure/test");
  CHECK(set.items[1].id == "map/PW 9");
  CHECK(std::holds_alternative<page::Anchor>(set.items[1].what));
  CHECK(page::text_of(set.items[2].tag) == "figure.0/link.0");
  CHECK(std::get<page::Link>(set.items[3].what).target == "mark/PW 9");
  CHECK(set.items[3].tag->key == set.items[2].tag->key);
}

TEST_CASE("labels of one lane that touch are pushed apart; beyond the limit they are reported once") {
  Desk desk;
  auto d = board();
  d.elements = {label(50, 50, "P9"), label(53, 50, "P10"), label(56, 50, "P11")};
  desk.look.measures["label-shift"] = {15};
  const auto runs = all<page::Run>(desk.draw(d));
  CHECK(desk.sink.ok());
  REQUIRE(runs.size() == 3);
  CHECK((runs[1].origin.x - runs[0].origin.x - width_of(runs[0])).v == Approx(2));
  CHECK((runs[2].origin.x - runs[1].origin.x - width_of(runs[1])).v == Approx(2));

  desk.look.measures["label-shift"] = {1};
  desk.draw(d);
  REQUIRE(desk.sink.all().size() == 1);
  CHECK(desk.sink.all()[0].code == base::Code::label_collision);
  CHECK(desk.sink.all()[0].message.find("P9") != std::string::npos);
}

TEST_CASE("labels of different lanes are not moved, and are reported where they lie over one another") {
  Desk desk;
  auto d = board();
  d.elements = {label(50, 25, "4.0"), label(50, 18, "20 %")};
  desk.draw(d);
  CHECK(desk.sink.ok());
  d.elements = {label(50, 25, "4.0"), label(50, 22, "20 %")};
  const auto runs = all<page::Run>(desk.draw(d));
  CHECK(desk.sink.errors() == 1);
  CHECK((runs[0].origin.x + width_of(runs[0]) / 2).v == Approx(70));
}

TEST_CASE("a label may use the room around the drawing and must not leave it") {
  Desk desk;
  auto d = board();
  d.elements = {label(100, 25, "inside", Anchor::left), label(50, 63, "x"), label(50, -19, "x")};
  std::get<Label>(d.elements[0]).text = content::plain("4.0");
  desk.draw(d);
  CHECK(desk.sink.ok());
  d.elements = {label(50, 25, "4.0"), label(50, -21, "deep")};
  desk.draw(d);
  REQUIRE(desk.sink.all().size() == 1);
  CHECK(desk.sink.all()[0].message.find("deep") != std::string::npos);
}

TEST_CASE("the number of an axis stands centred under or over its tick, and level with it at the left") {
  Desk desk;
  const double cap = typeset::cap_height(desk.look.text["axis-number"], desk.fonts).v;
  content::Axis axis;
  axis.ticks = {0, 50, 100};
  axis.numbers = {{50, "13"}};
  auto d = board();
  d.elements = {axis};
  auto set = desk.draw(d);
  const auto under = all<page::Run>(set).at(0);
  CHECK((under.origin.x + width_of(under) / 2).v == Approx(70));
  CHECK(under.origin.y.v == Approx(70 + 4 + 2 + cap));
  CHECK(all<page::Path>(set).at(0).steps.size() == 6);

  axis.side = content::Axis::Side::top;
  axis.at = 50;
  d.elements = {axis};
  const auto over = all<page::Run>(desk.draw(d)).at(0);
  CHECK(over.origin.y.v == Approx(20 - 4 - 2));

  axis.side = content::Axis::Side::left;
  axis.at = 0;
  axis.ticks = {25};
  axis.numbers = {{25, "4"}};
  d.elements = {axis};
  const auto left = all<page::Run>(desk.draw(d)).at(0);
  CHECK((left.origin.x + width_of(left)).v == Approx(20 - 4 - 2));
  CHECK(left.origin.y.v == Approx(45 + cap / 2));
  CHECK(desk.sink.ok());
}
