#include <catch2/catch.hpp>

#include "strakebook/paper/content/difference.h"
#include "strakebook/paper/content/said.h"

using namespace strakebook::content;

// Two editions of a document by hand: what differs is marked, and nothing else.

namespace {

Block paragraph(const std::string &text) { return {.what = Paragraph{plain(text), "text", {}}}; }
Block heading(const std::string &text, const std::string &number = {}) { return {.what = Heading{2, number, plain(text), true, {}}}; }

Row row(const std::string &id, const std::vector<std::string> &cells) {
  Row out{.id = id};
  for (const auto &one : cells)
    out.cells.push_back({.text = plain(one)});
  return out;
}

Table table(const std::vector<std::string> &heads, std::vector<Row> rows) {
  Table out;
  out.label = "Table 1";
  out.caption = plain("Readings.");
  for (const auto &head : heads)
    out.columns.push_back({.head = head});
  out.groups.push_back({.head = plain("port"), .id = "rows/PW", .rows = std::move(rows)});
  return out;
}

Document document(std::vector<Block> blocks) {
  Document out;
  out.sections.push_back({.id = "section/one", .blocks = std::move(blocks)});
  return out;
}

Document marked(std::vector<Block> now, std::vector<Block> before) {
  auto out = document(std::move(now));
  mark_changes(out, document(std::move(before)), {});
  return out;
}

/// Everything in a document that has a mark, in words: "block 2", "row mark/PW 2", "caption", "note 1".
struct Marks {
  std::vector<std::string> all;

  void see(const std::vector<Block> &blocks) {
    for (std::size_t i = 0; i < blocks.size(); ++i) {
      if (blocks[i].changed)
        all.push_back("block " + std::to_string(i));
      std::visit([this](const auto &what) { visit(what); }, blocks[i].what);
    }
  }
  void visit(const Table &table) {
    if (table.caption_changed)
      all.push_back("caption");
    for (const auto &group : table.groups) {
      if (group.head_changed)
        all.push_back("head " + group.id);
      for (const auto &one : group.rows)
        if (one.changed)
          all.push_back("row " + one.id);
    }
    for (const auto note : table.changed_notes)
      all.push_back("note " + std::to_string(note));
  }
  void visit(const Figure &figure) {
    if (figure.caption_changed)
      all.push_back("caption");
    for (const auto &panel : figure.panels) {
      if (panel.changed)
        all.push_back("panel " + panel.id);
      for (const auto &element : panel.drawing.elements)
        if (const auto *spot = std::get_if<Spot>(&element); spot && spot->changed)
          all.push_back("sign " + spot->target);
    }
  }
  void visit(const KeyValues &keys) {
    for (const auto &entry : keys.entries)
      if (entry.changed)
        all.push_back("entry " + entry.label);
  }
  void visit(const Columns &columns) {
    for (const auto &cell : columns.cells)
      see(cell);
  }
  void visit(const Together &together) { see(together.blocks); }
  template <class T> void visit(const T &) {}
};

std::vector<std::string> marks(const Document &document) {
  Marks found;
  for (const auto &section : document.sections)
    found.see(section.blocks);
  return std::move(found.all);
}

using Found = std::vector<std::string>;

Figure figure(std::vector<Element> elements) {
  Figure out;
  out.label = "Figure 1";
  out.panels.push_back({.drawing = {.elements = std::move(elements)}, .id = "figure/map"});
  return out;
}

} // namespace

TEST_CASE("the longest common sequence keeps the order, with heads and tails alike") {
  const auto found = matched({"a", "x", "b", "c", "d"}, {"a", "b", "y", "c", "d"});
  REQUIRE(found.size() == 5);
  CHECK(found[0] == 0u);
  CHECK_FALSE(found[1]);
  CHECK(found[2] == 1u);
  CHECK(found[3] == 3u);
  CHECK(found[4] == 4u);
  CHECK(matched({}, {"a"}).empty());
  CHECK_FALSE(matched({"a"}, {}).front());
  // "b a" and "a b" share one letter and no more, whichever it is
  const auto crossed = matched({"b", "a"}, {"a", "b"});
  CHECK(crossed[0].has_value() != crossed[1].has_value());
}

TEST_CASE("one paragraph that reads otherwise is marked, and none of its neighbours") {
  const auto same = [] { return std::vector<Block>{heading("Head"), paragraph("one"), paragraph("two"), paragraph("three")}; };
  CHECK(marks(marked(same(), same())).empty());
  auto now = same();
  now[2] = paragraph("two, corrected");
  CHECK(marks(marked(now, same())) == Found{"block 2"});
  now = same();
  now.insert(now.begin() + 2, paragraph("new"));
  CHECK(marks(marked(now, same())) == Found{"block 2"});
}

TEST_CASE("where a paragraph is gone, the heading over it is marked") {
  const std::vector<Block> before = {heading("First"), paragraph("stays"), heading("Second"), paragraph("goes"), paragraph("stays too")};
  CHECK(marks(marked({heading("First"), paragraph("stays"), heading("Second"), paragraph("stays too")}, before)) == Found{"block 2"});
}

TEST_CASE("running numbers and pages mark nothing") {
  const Inlines to_page = {Reference{"mark/PW 1", Reference::Form::page, {}, {}}};
  auto then = table({"mark"}, {row("mark/PW 1", {"PW 1"})});
  auto now = then;
  now.label = "Table 2";
  const Block link{.what = Paragraph{to_page, "text", {}}};
  CHECK(marks(marked({heading("Head", "3.2"), link, {.what = now}}, {heading("Head", "3.1"), link, {.what = then}})).empty());
}

TEST_CASE("a changed reading marks its row alone, and rows may change places") {
  const auto before = table({"mark", "mm"}, {row("mark/PW 1", {"PW 1", "5.8"}), row("mark/PW 2", {"PW 2", "6.4"}), row("mark/PW 3", {"PW 3", "5.9"})});
  auto now = before;
  now.groups[0].rows[1].cells[1].text = plain("4.6");
  CHECK(marks(marked({{.what = now}}, {{.what = before}})) == Found{"row mark/PW 2"});
  std::swap(now.groups[0].rows[0], now.groups[0].rows[1]);
  CHECK(marks(marked({{.what = now}}, {{.what = before}})) == Found{"row mark/PW 2"});
}

TEST_CASE("a row that is gone marks the caption, one that is new itself") {
  const auto long_table = table({"mark"}, {row("mark/PW 1", {"1"}), row("mark/PW 2", {"2"})});
  const auto short_table = table({"mark"}, {row("mark/PW 1", {"1"})});
  CHECK(marks(marked({{.what = short_table}}, {{.what = long_table}})) == Found{"caption"});
  CHECK(marks(marked({{.what = long_table}}, {{.what = short_table}})) == Found{"row mark/PW 2"});
  const auto unnamed = table({"what"}, {row({}, {"a"}), row({}, {"b"})});
  CHECK(marks(marked({{.what = table({"what"}, {row({}, {"b"})})}}, {{.what = unnamed}})) == Found{"caption"});
}

TEST_CASE("a column that few rows fill marks those rows; another form of the table marks its caption alone") {
  const auto plain_form = table({"mark", "mm"}, {row("mark/1", {"1", "5.8"}), row("mark/2", {"2", "5.9"}), row("mark/3", {"3", "6.0"})});
  auto with_photos = table({"mark", "mm", "photo"},
                           {row("mark/1", {"1", "5.8", "–"}), row("mark/2", {"2", "5.9", "4"}), row("mark/3", {"3", "6.0", ""})});
  CHECK(marks(marked({{.what = with_photos}}, {{.what = plain_form}})) == Found{"caption", "row mark/2"});
  auto with_loss = table({"mark", "mm", "loss"},
                         {row("mark/1", {"1", "5.8", "0.2"}), row("mark/2", {"2", "5.9", "0.1"}), row("mark/3", {"3", "6.0", "0"})});
  CHECK(marks(marked({{.what = with_loss}}, {{.what = plain_form}})) == Found{"caption"});
  CHECK(marks(marked({{.what = plain_form}}, {{.what = with_loss}})) == Found{"caption"});
}

TEST_CASE("group heads, notes and captions are marked by themselves") {
  auto before = table({"mark"}, {row("mark/1", {"1"})});
  before.notes = {plain("n used"), plain("as displayed")};
  auto now = before;
  now.groups[0].head = plain("port, 9 read");
  now.notes[1] = plain("as judged");
  CHECK(marks(marked({{.what = now}}, {{.what = before}})) == Found{"head rows/PW", "note 1"});
  now = before;
  now.caption = plain("All readings.");
  CHECK(marks(marked({{.what = now}}, {{.what = before}})) == Found{"caption"});
}

TEST_CASE("a glyph at another scale is the same glyph") {
  auto before = table({"mark", "section"}, {row("mark/1", {"1", ""})});
  before.groups[0].rows[0].cells[1].glyph = Drawing{.x1 = 6.4, .elements = {Outline{{{0, 0}, {4.6, 1}}, true, "ramp-3"}}};
  auto now = before;
  now.groups[0].rows[0].cells[1].glyph->x1 = 6;
  CHECK(marks(marked({{.what = now}}, {{.what = before}})).empty());
  std::get<Outline>(now.groups[0].rows[0].cells[1].glyph->elements[0]).points[1].x = 4.7;
  CHECK(marks(marked({{.what = now}}, {{.what = before}})) == Found{"row mark/1"});
}

TEST_CASE("in a figure the caption is marked, and the sign whose figure differs, wherever it stands") {
  Label label;
  label.text = plain("6.4");
  label.target = "mark/PW 2";
  const Spot one{{1, 0}, "meets", {}, "map/mark/PW 1", "mark/PW 1"}, two{{2, 0}, "meets", {}, "map/mark/PW 2", "mark/PW 2"};
  const auto before = figure({one, two, label});
  label.text = plain("4.6");
  label.at = {7, 7};
  auto moved = one;
  moved.at = {9, 9};
  CHECK(marks(marked({{.what = figure({moved, two, label})}}, {{.what = before}})) == Found{"caption", "sign mark/PW 2"});
  auto several = before, then = before;
  several.panels.push_back(several.panels.front());
  several.panels.back().id = "figure/other";
  then.panels.push_back(several.panels.back());
  several.panels.back().title = plain("starboard");
  CHECK(marks(marked({{.what = several}}, {{.what = then}})) == Found{"caption", "panel figure/other"});
}

TEST_CASE("groups are known again by what is in them, though one is put before them") {
  const auto item = [](const std::string &id, const std::string &text) {
    Block head = heading("Item");
    head.id = "item/" + id;
    return Block{.what = Together{{head, paragraph(text)}}};
  };
  const auto found = marks(marked({item("0", "new"), item("1", "same"), item("2", "otherwise")}, {item("1", "same"), item("2", "as it was")}));
  CHECK(found == Found{"block 0", "block 1"}); // the new item whole; of the last one its second block
}

TEST_CASE("entries and the cells of columns are marked one by one") {
  const auto keys = [](const std::string &value) { return Block{.what = KeyValues{{{"issue", plain("2"), {}}, {"place", plain(value), {}}}}}; };
  CHECK(marks(marked({keys("Lower Osier")}, {keys("Sallow Reach")})) == Found{"entry place"});
  const auto columns = [](const std::string &side) { return Block{.what = Columns{"halves", {{paragraph("left")}, {paragraph(side)}}}}; };
  CHECK(marks(marked({columns("told otherwise")}, {columns("told")})) == Found{"block 0"});
}

TEST_CASE("a section that is new is marked whole, unless it is left out") {
  auto now = document({paragraph("one")});
  now.sections.push_back({.id = "section/two", .blocks = {paragraph("two"), {.what = Space{}}}});
  auto left_out = now;
  mark_changes(now, document({paragraph("one")}), {});
  CHECK(marks(now) == Found{"block 0"});
  mark_changes(left_out, document({paragraph("one")}), {"section/two"});
  CHECK(marks(left_out).empty());
}
