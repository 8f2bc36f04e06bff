#include <catch2/catch.hpp>

#include "pages_support.h"

using namespace paper_test;

// The body is 50 to 650 pt: 600 pt, 50 lines of 12 pt. Positions below are sums of lines.

TEST_CASE("opaque blocks stand one under the other and never cross a page") {
  Desk desk;
  const auto pages =
      set(document({opaque(20, "a"), opaque(20, "b"), opaque(10, "c"), opaque(1, "d")}), desk).pages;
  REQUIRE(desk.sink.ok());
  REQUIRE(pages.size() == 2);
  CHECK(y_of_anchor(pages[0], "a") == Approx(50));
  CHECK(y_of_anchor(pages[0], "b") == Approx(50 + 20 * 12));
  CHECK(y_of_anchor(pages[0], "c") == Approx(50 + 40 * 12)); // ends at 650 exactly
  CHECK(y_of_anchor(pages[1], "d") == Approx(50));
}

TEST_CASE("an opaque block one line higher than the rest of a page moves whole") {
  Desk desk;
  const auto pages = set(document({opaque(20, "a"), opaque(31, "b")}), desk).pages;
  REQUIRE(pages.size() == 2);
  CHECK(y_of_anchor(pages[1], "b") == Approx(50));
}

TEST_CASE("a heading goes with what follows it") {
  Desk desk;
  // 12 above, 18 high, 6 below: 36 in all, so 46 lines + heading end at 588 of 600; a block of two lines no
  // longer fits.
  const auto pages =
      set(document({opaque(46, "a"), heading(1, "1", "Kept", "h"), opaque(2, "b")}), desk).pages;
  REQUIRE(pages.size() == 2);
  CHECK(anchor_of(pages[0], "h") == nullptr);
  CHECK(y_of_anchor(pages[1], "h") == Approx(50));
  CHECK(y_of_anchor(pages[1], "b") == Approx(50 + 18 + 6));
}

TEST_CASE("a heading stays where what follows it fits") {
  Desk desk;
  const auto pages =
      set(document({opaque(46, "a"), heading(1, "1", "Kept", "h"), opaque(1, "b")}), desk).pages;
  REQUIRE(pages.size() == 1);
  CHECK(y_of_anchor(pages[0], "h") == Approx(50 + 46 * 12 + 12));
}

TEST_CASE("a paragraph is split with two lines at either side") {
  const auto lines_on_pages = [](int before, int lines) {
    Desk desk;
    auto p = opaque(lines);
    auto text = std::get<content::Together>(p.what).blocks.front();
    const auto pages = set(document({opaque(before), text}), desk).pages;
    std::vector<int> counts;
    for (const auto &one : pages)
      counts.push_back(static_cast<int>(lines_of(one, "body").size()));
    return counts;
  };
  CHECK(lines_on_pages(46, 6) == std::vector<int>{50, 2});
  CHECK(lines_on_pages(46, 5) == std::vector<int>{49, 2}); // no single line over
  CHECK(lines_on_pages(49, 6) == std::vector<int>{49, 6}); // no single line left
  CHECK(lines_on_pages(48, 3) == std::vector<int>{48, 3}); // three lines cannot be parted
  CHECK(lines_on_pages(46, 4) == std::vector<int>{50});
}

TEST_CASE("a block that no page can hold is reported at its origin and ends the search") {
  Desk desk;
  auto file =
      std::make_shared<strakebook::base::SourceFile>(strakebook::base::SourceFile{"survey.yaml", "a\nb\n"});
  strakebook::content::Table table;
  table.columns = {{content::Column::Align::left, "words", {}, true, {}}};
  content::Cell cell;
  for (int i = 0; i < 80; ++i) {
    cell.text.push_back(content::Text{"tall"});
    cell.text.push_back(content::LineBreak{});
  }
  content::Row row;
  row.cells.push_back(cell);
  table.groups.push_back({{}, {}, {row}});
  auto too_large = block(table, "table/tall");
  too_large.origin = {file, 2, 1, 1};
  const auto pages = set(document({opaque(3), too_large, opaque(1, "after")}), desk).pages;
  REQUIRE(count_code(desk, Code::block_too_large) == 1);
  CHECK(desk.sink.all().front().span.line == 2);
  CHECK(anchor_of(pages.back(), "after") != nullptr);
}

TEST_CASE("a page break, a section that starts a page and a change of master begin pages") {
  Desk desk;
  auto d = document({opaque(1), block(content::PageBreak{}), opaque(1, "b")});
  d.sections.push_back({"section/two", "page", true, {opaque(1)}});
  d.sections.push_back({"section/three", "wide", false, {opaque(1)}});
  d.sections.push_back({"section/four", "wide", false, {opaque(1)}});
  const auto pages = set(d, desk).pages;
  REQUIRE(pages.size() == 4);
  CHECK(anchor_of(pages[1], "b") != nullptr);
  CHECK(anchor_of(pages[2], "section/two") != nullptr);
  CHECK(pages[3].size.width.v == 700);
  CHECK(anchor_of(pages[3], "section/four") != nullptr);
}

TEST_CASE("cells of columns go on over pages each on its own") {
  Desk desk;
  content::Columns columns{"text-side", {{}, {}}};
  for (int i = 0; i < 30; ++i) {
    columns.cells[0].push_back(opaque(2));
    if (i < 5)
      columns.cells[1].push_back(opaque(1));
  }
  const auto pages = set(document({block(columns), opaque(1, "after")}), desk).pages;
  REQUIRE(desk.sink.ok());
  REQUIRE(pages.size() == 2);
  CHECK(lines_of(pages[0], "body").size() == 50);
  CHECK(y_of_anchor(pages[1], "after") == Approx(50 + 10 * 12));
}

TEST_CASE("first lines of cells stand on one baseline") {
  Desk desk;
  content::Columns columns{"text-side", {{paragraph("large", "text")}, {paragraph("small", "caption")}}};
  const auto pages = set(document({block(columns)}), desk).pages;
  CHECK(lines_of(pages[0], "body").size() == 1);
}

TEST_CASE("no words leave their frame, and every frame has its furniture") {
  Desk desk;
  std::vector<content::Block> blocks;
  for (int i = 0; i < 40; ++i)
    blocks.push_back(
        paragraph("Away from pits the plate keeps 10.6 to 11.8\u00A0mm, a general loss of 2 to 12\u00A0%, "
                  "and an-extremely-long-word-with-hyphens next to "
                  "Donaudampfschifffahrtselektrizitaetenhauptbetriebswerkbauunterbeamtengesellschaft.",
                  i % 2 ? "text" : "ragged"));
  const auto pages = set(document(blocks), desk).pages;
  REQUIRE(pages.size() > 1);
  for (const auto &p : pages) {
    CHECK(text_of(p, "head") == "Test boat\n");
    const auto &body = p.frames.front().box;
    for (const auto &item : p.items)
      if (const auto *run = std::get_if<page::Run>(&item.what); run && run->origin.y > body.at.y) {
        double x = run->origin.x.v;
        for (const auto &glyph : run->glyphs)
          x += glyph.advance.v;
        CHECK(run->origin.x.v >= body.at.x.v - 0.01);
        CHECK(x <= body.right().v + 0.01);
      }
  }
  CHECK(text_of(pages.back(), "foot") ==
        "page " + std::to_string(pages.size()) + " of " + std::to_string(pages.size()) + "\n");
}
