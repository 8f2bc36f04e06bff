#include <catch2/catch.hpp>

#include "drawing_support.h"
#include "strakebook/paper/typeset/figure.h"

using namespace drawing_test;
using typeset::Region;

namespace {

/// A panel: 10 pt of title, 6 of gap, 20 + 50 + 20 of drawing.
content::Figure::Panel panel(const std::string &name) {
  content::Figure::Panel p;
  p.title = content::strong(name);
  p.title_right = content::plain("lowest 4.6");
  p.drawing = board();
  p.drawing.elements = {content::Outline{{{0, 0}, {100, 50}}, false, "outline"}};
  p.id = "panel/" + name;
  return p;
}

content::Figure five() {
  content::Figure f;
  f.lattice = "halves";
  for (const auto *name : {"PW", "PM", "PC", "BP", "BC"}) f.panels.push_back(panel(name));
  return f;
}

constexpr double row = 10 + 6 + 90;
constexpr double gap = 6;

Region room(double height) { return {{400}, {height}, {600}}; }

page::Anchor place_of(const typeset::Fragment &f, const std::string &id) {
  for (const auto &item : f.items)
    if (item.id == id && std::holds_alternative<page::Anchor>(item.what)) return std::get<page::Anchor>(item.what);
  FAIL("no anchor " << id);
  return {};
}

} // namespace

TEST_CASE("panels stand row by row in their lattice") {
  Desk desk;
  const auto out = typeset::lay_figure(five(), {}, room(600), desk.context());
  const auto &set = std::get<typeset::Whole>(out).fragment;
  CHECK(set.size.height.v == Approx(3 * row + 2 * gap));
  CHECK(place_of(set, "panel/PM").at.x.v == Approx(210));
  CHECK(place_of(set, "panel/PM").at.y.v == Approx(0));
  CHECK(place_of(set, "panel/BC").at.x.v == Approx(0));
  CHECK(place_of(set, "panel/BC").at.y.v == Approx(2 * (row + gap)));
  CHECK(desk.sink.ok());
}

TEST_CASE("the title on the right ends at the panel's right edge, on the baseline of the left one") {
  Desk desk;
  const auto out = typeset::lay_figure(five(), {}, room(600), desk.context());
  const auto runs = all<page::Run>(std::get<typeset::Whole>(out).fragment);
  CHECK((runs[1].origin.x + width_of(runs[1])).v == Approx(190));
  CHECK(runs[1].origin.y.v == Approx(runs[0].origin.y.v));
}

TEST_CASE("a figure splits between rows and goes on where it stopped") {
  Desk desk;
  const auto exact = typeset::lay_figure(five(), {}, room(3 * row + 2 * gap), desk.context());
  CHECK(std::holds_alternative<typeset::Whole>(exact));
  const auto out = typeset::lay_figure(five(), {}, room(3 * row + 2 * gap - 0.1), desk.context());
  const auto &part = std::get<typeset::Part>(out);
  CHECK(part.rest.index == 2);
  CHECK(part.fragment.size.height.v == Approx(2 * row + gap));
  const auto rest = typeset::lay_figure(five(), part.rest, room(600), desk.context());
  const auto &set = std::get<typeset::Whole>(rest).fragment;
  CHECK(set.size.height.v == Approx(row));
  CHECK(place_of(set, "panel/BC").at.y.v == Approx(0));
}

TEST_CASE("a row that does not fit waits for the next page") {
  Desk desk;
  CHECK(std::holds_alternative<typeset::NextPage>(typeset::lay_figure(five(), {}, room(row - 0.1), desk.context())));
  CHECK(std::get<typeset::Part>(typeset::lay_figure(five(), {}, room(row), desk.context())).rest.index == 1);
}

TEST_CASE("caption and notes stand with the first and the last row; a rest says where the figure began") {
  Desk desk;
  auto f = five();
  f.label = "Figure 11.1";
  f.caption = content::plain("What is left of each row.");
  f.notes = {content::plain("Readings: Table 11.2.")};
  const auto whole = typeset::lay_figure(f, {}, room(600), desk.context());
  const double height = std::get<typeset::Whole>(whole).fragment.size.height.v;
  CHECK(height == Approx(10 + 6 + 3 * row + 2 * gap + 6 + 10));
  // All rows would fit, the note would not: the last row goes with it.
  const auto out = typeset::lay_figure(f, {}, room(height - 1), desk.context());
  const auto &part = std::get<typeset::Part>(out);
  CHECK(part.rest.index == 2);
  auto next = desk.context();
  next.page = 13;
  const auto rest = typeset::lay_figure(f, part.rest, room(600), next);
  std::string words;
  for (const auto &run : all<page::Run>(std::get<typeset::Whole>(rest).fragment)) words += run.text;
  CHECK(words.find("Figure 11.1") != std::string::npos);
  CHECK(words.find("p. 12") != std::string::npos);
  CHECK(words.find("Table 11.2") != std::string::npos);
  CHECK(words.find("What is left") == std::string::npos);
}

TEST_CASE("panels that fill share one scale") {
  Desk desk;
  auto f = five();
  f.panels.resize(2);
  for (auto &p : f.panels) p.drawing.x.rule = content::Scale::Rule::fill;
  f.panels[1].drawing.x1 = 50;
  const auto out = typeset::lay_figure(f, {}, room(600), desk.context());
  const auto paths = all<page::Path>(std::get<typeset::Whole>(out).fragment);
  const auto width = [](const page::Path &p, double units) {
    return (std::get<page::Line>(p.steps[1]).to.x - std::get<page::Move>(p.steps[0]).to.x).v / units;
  };
  CHECK(width(paths[0], 100) == Approx(1.5));
  CHECK(width(paths[1], 100) == Approx(1.5));
}

TEST_CASE("titles of a panel that do not fit on one line stand one under the other") {
  Desk desk;
  auto f = five();
  f.panels.resize(1);
  f.panels[0].title = content::plain("a very long name of a row of plating that nobody would give");
  const auto height = [&] {
    return std::get<typeset::Whole>(typeset::lay_figure(f, {}, room(600), desk.context())).fragment.size.height;
  };
  const auto stacked = height();
  f.panels[0].title = content::plain("short");
  CHECK(stacked > height());
  CHECK(desk.sink.errors() == 0);
}
