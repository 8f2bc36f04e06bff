#include <catch2/catch.hpp>
#include <cmath>

#include "pages_support.h"
#include "strakebook/paper/typeset/table_split.h"
#include "strakebook/paper/typeset/table_widths.h"
#include "table_support.h"

using namespace paper_test;
using namespace strakebook::typeset;

namespace {

content::Table readings(int groups, int rows) {
  using Align = content::Column::Align;
  content::Table t;
  t.label = "Table 11.2";
  t.caption = content::plain("Readings at every planned mark.");
  t.columns = {{Align::left, "mark", {}, false, {}},
               {Align::decimal, "remaining", "mm", false, {}},
               {Align::left, "status", {}, true, {}}};
  for (int g = 0; g < groups; ++g) {
    content::RowGroup group{content::strong("R" + std::to_string(g)), {}, {}};
    for (int i = 0; i < rows; ++i)
      group.rows.push_back(row("mark/" + std::to_string(g) + "." + std::to_string(i),
                               {std::to_string(i), i % 2 ? "5.7" : "11.25", "read"}));
    t.groups.push_back(group);
  }
  t.notes.push_back(content::plain("Loss is of the nominal original."));
  return t;
}

} // namespace

TEST_CASE("a table over several pages repeats head and units, says where it goes on, and loses no row") {
  Desk desk;
  const auto pages = set(document({block(readings(3, 40), "table/marks")}), desk).pages;
  REQUIRE(desk.sink.ok());
  REQUIRE(pages.size() == 3);
  int anchors = 0;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const auto text = text_of(pages[i]);
    CHECK(text.find("remaining") != std::string::npos);
    CHECK(text.find("Loss is of") != std::string::npos);
    CHECK((text.find("continued from p. " + std::to_string(i)) != std::string::npos) == (i > 0));
    CHECK((text.find("continued on p. " + std::to_string(i + 2)) != std::string::npos) ==
          (i + 1 < pages.size()));
    for (const auto &item : pages[i].items)
      if (std::holds_alternative<page::Anchor>(item.what) && item.id.rfind("mark/", 0) == 0)
        ++anchors;
  }
  CHECK(anchors == 120);
}

TEST_CASE("the head of a group that is cut stands again, with the word continued") {
  Desk desk;
  const auto pages = set(document({block(readings(1, 80))}), desk).pages;
  REQUIRE(pages.size() == 2);
  CHECK(text_of(pages[1]).find("R0|\u00A0 |continued") != std::string::npos);
  CHECK(text_of(pages[0]).find("|continued\n") == std::string::npos);
}

TEST_CASE("a group head and both sides of a cut keep two rows") {
  const auto table = readings(2, 5);
  const auto entries = entries_of(table); // head, 5 rows, head, 5 rows
  REQUIRE(entries.size() == 12);
  CHECK_FALSE(may_split(entries, 0, 1, {2})); // head alone
  CHECK_FALSE(may_split(entries, 0, 2, {2})); // one row under it
  CHECK(may_split(entries, 0, 3, {2}));
  CHECK(may_split(entries, 0, 4, {2}));
  CHECK_FALSE(may_split(entries, 0, 5, {2})); // one row left over
  CHECK(may_split(entries, 0, 6, {2}));       // between groups
  CHECK_FALSE(may_split(entries, 0, 7, {2}));
  CHECK(split_at(entries, 0, 5, {2}, false) == 4);
  CHECK(split_at(entries, 0, 2, {2}, false) == 0); // nothing: the next page
  CHECK(split_at(entries, 0, 2, {2}, true) == 2);  // an empty page: one row rather than none
  CHECK(split_at(entries, 0, 1, {2}, true) == 0);
}

TEST_CASE("decimal points of a column stand under each other") {
  Desk desk;
  const auto pages = set(document({block(readings(1, 4))}), desk).pages;
  std::vector<double> points;
  for (const auto &item : pages[0].items)
    if (const auto *run = std::get_if<page::Run>(&item.what);
        run && (run->text == "5.7" || run->text == "11.25")) {
      double x = run->origin.x.v;
      for (const auto &glyph : run->glyphs) {
        if (run->text[glyph.cluster] == '.')
          points.push_back(x);
        x += glyph.advance.v;
      }
    }
  REQUIRE(points.size() == 4);
  for (const double x : points)
    CHECK(x == Approx(points[0]).margin(0.01));
}

TEST_CASE("rows are a pitch high, and stretching columns take what is left") {
  Desk desk;
  const auto table = readings(1, 3);
  const auto pages = set(document({block(table)}), desk).pages;
  const double first = y_of_anchor(pages[0], "mark/0.0");
  CHECK(y_of_anchor(pages[0], "mark/0.2") == Approx(first + 2 * 12));
  const auto context = desk.context();
  CHECK(table_widths(table, {400}, context).total.v == Approx(400));
}

TEST_CASE("words in a stretching column break their lines and the row grows") {
  Desk desk;
  auto table = readings(1, 2);
  table.groups[0].rows[0].cells[2].text =
      content::plain(std::string(60, 'w') + " " + std::string(60, 'w') + " end");
  const auto pages = set(document({block(table)}), desk).pages;
  REQUIRE(desk.sink.ok());
  const double grown = y_of_anchor(pages[0], "mark/0.1") - y_of_anchor(pages[0], "mark/0.0");
  CHECK(grown > 12);
  CHECK(grown == Approx(12 + 10 * ((grown - 12) / 10)));
  CHECK(std::fmod(grown - 12, 10) == Approx(0).margin(0.001));
}

TEST_CASE("a changed row has its bar in the margin, at the offset the style gives") {
  Desk desk;
  auto table = readings(1, 3);
  table.groups[0].rows[1].changed = true;
  const auto pages = set(document({block(table)}), desk).pages;
  int bars = 0;
  for (const auto &item : pages[0].items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && path->fill) {
      const auto at = std::get<page::Move>(path->steps.front()).to;
      CHECK(at.x.v == Approx(50 - 17));
      CHECK(at.y.v == Approx(y_of_anchor(pages[0], "mark/0.1")));
      ++bars;
    }
  CHECK(bars == 1);
}

TEST_CASE("a table wider than its place is reported once; a stretching column gives way first") {
  Desk desk;
  auto table = readings(1, 2);
  for (int i = 0; i < 8; ++i) {
    table.columns.push_back({content::Column::Align::left, std::string(20, 'w'), {}, i == 0, {}});
    for (auto &r : table.groups[0].rows)
      r.cells.push_back({content::plain("x"), {}, {}, "", 1});
  }
  set(document({block(table, "table/wide")}), desk);
  CHECK(count_code(desk, Code::block_too_large) == 1);
}

TEST_CASE("gaps share in what is left, up to their most") {
  Desk desk;
  auto table = readings(1, 2);
  for (auto &column : table.columns)
    column.stretch = false;
  const auto context = desk.context();
  const auto &widths = table_widths(table, {400}, context);
  CHECK(widths.left[1] - widths.left[0] - widths.width[0] == strakebook::base::Pt{30}); // table-gap-most
  CHECK(widths.total.v < 400);
}

TEST_CASE("a table set abreast fills one column after the other, each with its heads, and loses no row") {
  Desk desk;
  desk.look.tables["plain"].abreast = 2;
  const auto pages = set(document({block(readings(3, 40), "table/marks")}), desk).pages;
  REQUIRE(desk.sink.ok());
  REQUIRE(pages.size() == 2);
  const auto count = [](const std::string &text, const std::string &part) {
    int n = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
      ++n;
    return n;
  };
  int anchors = 0;
  for (const auto &page : pages) {
    CHECK(count(text_of(page), "remaining") == 2);
    CHECK(count(text_of(page), "Table 11.2") == 1);
    CHECK(count(text_of(page), "Loss is of") == 1);
    for (const auto &item : page.items)
      if (std::holds_alternative<page::Anchor>(item.what) && item.id.rfind("mark/", 0) == 0)
        ++anchors;
  }
  CHECK(anchors == 120);
  // the second column of the first page goes on with the group that the first one cuts
  CHECK(count(text_of(pages[0]), "continued\n") >= 1);
}

TEST_CASE("the columns that end a table set abreast are about equally high") {
  Desk desk;
  desk.look.tables["plain"].abreast = 2;
  const auto pages = set(document({block(readings(1, 40))}), desk).pages;
  REQUIRE(pages.size() == 1);
  const auto *first = anchor_of(pages[0], "mark/0.0");
  REQUIRE(first);
  const auto &top = std::get<page::Anchor>(first->what).at;
  int left = 0, right = 0;
  double lowest = 0;
  for (const auto &item : pages[0].items)
    if (const auto *at = std::get_if<page::Anchor>(&item.what); at && item.id.rfind("mark/", 0) == 0) {
      ++(at->at.x.v > top.x.v + 1 ? right : left);
      lowest = std::max(lowest, at->at.y.v);
    }
  CHECK(left + right == 40);
  CHECK(std::abs(left - right) <= 2);
  CHECK(lowest < top.y.v + 22 * 12);
}

TEST_CASE("a table too wide to stand abreast keeps the whole width") {
  Desk desk;
  desk.look.tables["plain"].abreast = 2;
  auto table = readings(1, 20);
  for (auto &row : table.groups[0].rows)
    row.cells[2].text = content::plain(std::string(80, 'w'));
  const auto text = text_of(set(document({block(table)}), desk).pages[0]);
  CHECK(desk.sink.ok());
  CHECK(text.find("remaining") == text.rfind("remaining"));
}

TEST_CASE("the change bar of a row abreast stands in the margin") {
  Desk desk;
  desk.look.tables["plain"].abreast = 2;
  auto table = readings(1, 40);
  table.groups[0].rows[39].changed = true;
  const auto pages = set(document({block(table)}), desk).pages;
  int bars = 0;
  for (const auto &item : pages[0].items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && path->fill) {
      CHECK(std::get<page::Move>(path->steps.front()).to.x.v == Approx(50 - 17));
      CHECK(std::get<page::Move>(path->steps.front()).to.y.v == Approx(y_of_anchor(pages[0], "mark/0.39")));
      ++bars;
    }
  CHECK(bars == 1);
}
