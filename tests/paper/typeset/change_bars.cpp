#include <catch2/catch.hpp>

#include "drawing_support.h"
#include "lines_support.h"
#include "strakebook/paper/typeset/figure.h"
#include "table_support.h"

// Bars beside what changed, and the line through what no longer stands. Body at 50, bars 17 left of it and 3 wide.

using namespace paper_test;
namespace typeset = strakebook::typeset;

namespace {

struct Box {
  double x, top, bottom;
};

std::vector<Box> bars_of(const page::Document &document) {
  std::vector<Box> found;
  for (const auto &item : document.pages[0].items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && path->fill) {
      const auto from = std::get<page::Move>(path->steps[0]).to, to = std::get<page::Line>(path->steps[2]).to;
      found.push_back({from.x.v, from.y.v, to.y.v});
    }
  return found;
}

content::Table table() {
  content::Table out;
  out.label = "Table 1";
  out.caption = content::plain("Readings");
  out.columns = {{.head = "mark", .stretch = true}};
  out.groups = {{.head = content::plain("port"), .id = "rows/PW", .rows = {row("mark/1", {"one"}), row("mark/2", {"two"})}}};
  out.notes = {content::plain("first note"), content::plain("second note")};
  return out;
}

double baseline_of(const page::Document &document, const std::string &text) {
  for (const auto &item : document.pages[0].items)
    if (const auto *run = std::get_if<page::Run>(&item.what); run && run->text.find(text) != std::string::npos) return run->origin.y.v;
  return -1;
}

void check_beside(const content::Table &what, const std::string &text) {
  Desk desk;
  const auto document = set(paper_test::document({block(what)}), desk);
  const auto bars = bars_of(document);
  INFO(text);
  REQUIRE(bars.size() == 1);
  CHECK(bars[0].x == Approx(33));
  const double line = baseline_of(document, text);
  CHECK(bars[0].top < line);
  CHECK(line < bars[0].bottom);
  CHECK(bars[0].bottom - bars[0].top < 30);
}

} // namespace

TEST_CASE("caption, group head and note of a table have bars of their own") {
  auto caption = table();
  caption.caption_changed = true;
  check_beside(caption, "Readings");
  auto head = table();
  head.groups[0].head_changed = true;
  check_beside(head, "port");
  auto note = table();
  note.changed_notes = {1};
  check_beside(note, "second note");
  auto unlabelled = table();
  unlabelled.unlabelled = unlabelled.caption_changed = true;
  check_beside(unlabelled, "mark");
}

TEST_CASE("an entry of a list of pairs has its bar in the margin, in the second column too") {
  Desk desk;
  content::KeyValues keys;
  keys.columns = 2;
  keys.entries = {{"issue", content::plain("2"), {}}, {"place", content::plain("Lower Osier"), {}, true}};
  const auto document = set(paper_test::document({block(keys)}), desk);
  const auto bars = bars_of(document);
  REQUIRE(bars.size() == 1);
  CHECK(bars[0].x == Approx(33));
}

TEST_CASE("in a figure the caption, a panel and a sign have theirs, the last at the sign") {
  drawing_test::Desk desk;
  desk.look.measures["change-bar-place"] = {2};
  content::Figure figure;
  figure.label = "Figure 1";
  figure.lattice = "halves";
  for (int i = 0; i < 2; ++i) figure.panels.push_back({.drawing = drawing_test::board(), .id = "panel/" + std::to_string(i)});
  content::Spot spot{{50, 25}, "meets", {}};
  spot.changed = true;
  figure.panels[1].drawing.elements = {spot};
  figure.panels[1].changed = figure.caption_changed = true;
  const auto outcome = typeset::lay_figure(figure, {}, {{400}, {600}, {600}}, desk.context());
  const auto &set = std::get<typeset::Whole>(outcome).fragment;
  std::vector<double> lefts;
  for (const auto &item : set.items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && path->fill) lefts.push_back(std::get<page::Move>(path->steps[0]).to.x.v);
  std::sort(lefts.begin(), lefts.end());
  // margin twice (caption and panel), and left of the sign: 210 + 20 + 50 - 2.5 - 3 - 2
  REQUIRE(lefts.size() == 3);
  CHECK(lefts[0] == Approx(-17));
  CHECK(lefts[1] == Approx(-17));
  CHECK(lefts[2] == Approx(272.5));
}

TEST_CASE("struck words have one line through their letters and blanks, and are read as they are") {
  Desk desk;
  const auto text = content::plain("was ") + content::struck("6.4 mm") + content::plain(" and is 4.6");
  const auto line = typeset::set_line(text, desk.look.text.at("ragged"), {}, desk.context());
  CHECK(text_of_line(line) == "was 6.4 mm and is 4.6");
  std::vector<double> ends;
  double from = 0, to = 0;
  for (const auto &item : line.items) {
    if (const auto *path = std::get_if<page::Path>(&item.what)) {
      ends = {std::get<page::Move>(path->steps[0]).to.x.v, std::get<page::Line>(path->steps[1]).to.x.v};
      CHECK(std::get<page::Move>(path->steps[0]).to.y < line.first_baseline);
      CHECK_FALSE(item.tag);
    }
    if (const auto *run = std::get_if<page::Run>(&item.what); run && run->text.find("6.4") != std::string::npos) {
      from = run->origin.x.v;
      to = from + drawing_test::width_of(*run).v;
    }
  }
  REQUIRE(ends.size() == 2);
  CHECK(ends[0] == Approx(from));
  CHECK(ends[1] == Approx(to));
}
