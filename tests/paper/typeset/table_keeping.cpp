#include <catch2/catch.hpp>

#include "pages_support.h"
#include "strakebook/paper/typeset/table_split.h"
#include "table_support.h"

using namespace paper_test;
using namespace strakebook::typeset;

namespace {

/// Groups of so many rows, one a number.
content::Table table_of(const std::vector<int> &groups) {
  content::Table t;
  t.label = "Table 1.1";
  t.caption = content::plain("What was counted: in order.");
  t.columns = {{content::Column::Align::left, "what", {}, true, {}}, {content::Column::Align::decimal, "mm", {}, false, {}}};
  for (std::size_t g = 0; g < groups.size(); ++g) {
    content::RowGroup group{content::strong("G" + std::to_string(g)), {}, {}};
    for (int i = 0; i < groups[g]; ++i)
      group.rows.push_back(row("row/" + std::to_string(g) + "." + std::to_string(i), {"row", "1.0"}));
    t.groups.push_back(group);
  }
  return t;
}

int page_of(const page::Document &d, const std::string &id) {
  for (std::size_t i = 0; i < d.pages.size(); ++i)
    if (anchor_of(d.pages[i], id))
      return static_cast<int>(i + 1);
  return 0;
}

double left_of(const page::Page &p, const std::string &text) {
  for (const auto &item : p.items)
    if (const auto *run = std::get_if<page::Run>(&item.what); run && run->text == text)
      return run->origin.x.v;
  return -1;
}

double width_of(const page::Page &p, const std::string &text) {
  double width = 0;
  for (const auto &item : p.items)
    if (const auto *run = std::get_if<page::Run>(&item.what); run && run->text == text)
      for (const auto &glyph : run->glyphs)
        width += glyph.advance.v;
  return width;
}

} // namespace

TEST_CASE("a small group is not split, a larger one is, and on an empty page any gives way") {
  const auto table = table_of({5, 5});
  const auto entries = entries_of(table); // head, 5 rows, head, 5 rows
  CHECK(may_split(entries, 0, 3, {2, 4}));
  CHECK_FALSE(may_split(entries, 0, 3, {2, 5}));
  CHECK(may_split(entries, 0, 6, {2, 5})); // between groups
  CHECK(split_at(entries, 0, 9, {2, 5}, false) == 6);
  CHECK(split_at(entries, 0, 4, {2, 5}, false) == 0);
  CHECK(split_at(entries, 0, 4, {2, 5}, true) == 4);
}

TEST_CASE("a total is never the first row of a page") {
  auto table = table_of({8});
  table.groups[0].rows.back().total = true;
  const auto entries = entries_of(table); // head, 8 rows
  CHECK(may_split(entries, 0, 7, {1}));
  CHECK_FALSE(may_split(entries, 0, 8, {1}));
}

TEST_CASE("a total stands under a rule as strong as that of the head") {
  Desk desk;
  auto table = table_of({3});
  const auto rules = [&] {
    int n = 0;
    const auto pages = set(document({block(table)}), desk).pages;
    for (const auto &item : pages[0].items)
      if (const auto *path = std::get_if<page::Path>(&item.what))
        n += path->stroke && path->stroke->width.v == 0.6;
    return n;
  };
  const int without = rules();
  table.groups[0].rows.back().total = true;
  CHECK(rules() == without + 1);
}

TEST_CASE("a small table goes to the next page whole, a larger one is split, and so is one whose rows are high") {
  Desk desk;
  desk.look.tables["plain"].keep_table = 12;
  const auto set_after = [&](int lines, const content::Table &table) {
    return set(document({opaque(lines), block(table, "table/one")}), desk);
  };
  const auto small = set_after(40, table_of({12}));
  CHECK(page_of(small, "table/one") == 2);
  CHECK(page_of(small, "row/0.11") == 2);
  const auto larger = set_after(40, table_of({13}));
  CHECK(page_of(larger, "table/one") == 1);
  CHECK(page_of(larger, "row/0.12") == 2);

  auto tall = table_of({12});
  for (auto &one : tall.groups[0].rows)
    for (int i = 0; i < 5; ++i) {
      one.cells[0].text.push_back(content::LineBreak{});
      one.cells[0].text.push_back(content::Text{"more"});
    }
  const auto set_tall = set_after(20, tall);
  CHECK(desk.sink.ok());
  CHECK(page_of(set_tall, "table/one") == 1);
  CHECK(page_of(set_tall, "row/0.11") == 2);
}

TEST_CASE("a range stands on the point of its first figure, words and dashes centred under the figures") {
  Desk desk;
  auto table = table_of({4});
  auto &rows = table.groups[0].rows;
  rows[0].cells[1].text = content::plain("5.25");
  rows[1].cells[1].text = content::plain("14.1");
  rows[2].cells[1].text = content::plain("5.25 (4.1)");
  rows[3].cells[1].text = content::plain("\u2013");
  const auto page = set(document({block(table)}), desk).pages[0];
  CHECK(left_of(page, "5.25") == Approx(left_of(page, "5.25 (4.1)")).margin(0.01));
  const double middle = left_of(page, "14.1") + width_of(page, "1") / 2;
  CHECK(middle > 0);
  // The figures reach from the tens of "14.1" to the end of "5.25 (4.1)".
  const double low = left_of(page, "14.1"), high = left_of(page, "5.25 (4.1)") + width_of(page, "5.25 (4.1)");
  CHECK(left_of(page, "\u2013") + width_of(page, "\u2013") / 2 == Approx((low + high) / 2).margin(0.01));
}

TEST_CASE("tables and figures are listed by label and the first statement of their caption, and bookmarked under their heading") {
  Desk desk;
  content::Figure figure;
  figure.label = "Figure 1.1";
  figure.caption = content::plain("The hull. Dark is thin.");
  content::Contents tables{0, content::Contents::Of::tables}, figures{0, content::Contents::Of::figures};
  const auto d = set(document({block(tables), block(figures), heading(1, "1", "Results", "s1"), block(content::PageBreak{}),
                               block(table_of({2}), "table/one"), block(figure, "figure/one")}),
                     desk);
  REQUIRE(desk.sink.ok());
  const auto text = text_of(d.pages[0]);
  CHECK(text.find("Table 1.1|What was counted|2\n") != std::string::npos);
  CHECK(text.find("Figure 1.1|The hull|2\n") != std::string::npos);
  REQUIRE(d.outline.size() == 3);
  CHECK(d.outline[1].title == "Table 1.1 What was counted");
  CHECK(d.outline[1].level == 2);
  CHECK(d.outline[2].target == "figure/one");
  CHECK(anchor_of(d.pages[1], "figure/one"));
}
