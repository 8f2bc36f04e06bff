#include <catch2/catch.hpp>

#include <algorithm>

#include "paper/typeset/pages_support.h"
#include "strakebook/paper/page/tag.h"

using namespace paper_test;
using page::Role;

namespace {

/// "H1 Results": every heading in order, with its level.
std::vector<std::string> headings(const page::Document &set) {
  std::vector<std::string> out;
  for (const auto &sheet : set.pages)
    for (const auto &item : sheet.items)
      if (const auto *run = std::get_if<page::Run>(&item.what); run && item.tag && item.tag->role == Role::heading)
        out.push_back("H" + std::to_string(item.tag->level) + " " + run->text);
  return out;
}

/// The roles from the document to the first run with these words.
std::string path_to(const page::Document &set, const std::string &words, std::size_t on_page = 0) {
  for (const auto &item : set.pages.at(on_page).items)
    if (const auto *run = std::get_if<page::Run>(&item.what); run && run->text.find(words) != std::string::npos) {
      std::string path;
      for (auto tag = item.tag; tag; tag = tag->parent)
        path = std::string(page::name_of(tag->role)) + (path.empty() ? "" : "/") + path;
      return path.empty() ? "-" : path;
    }
  return "not printed";
}

content::Table table(int rows) {
  content::Table t;
  t.label = "Table 1";
  t.caption = content::plain("Readings");
  t.columns = {{content::Column::Align::left, "stn", "", true, ""}, {content::Column::Align::right, "left", "mm", false, ""}};
  t.groups.push_back({content::plain("Row PW"), "row/PW", {}});
  for (int i = 0; i < rows; ++i)
    t.groups.back().rows.push_back({"mark/" + std::to_string(i),
                                    {{content::plain("s" + std::to_string(i)), {}, "", "", 1}, {{}, {}, "", "", 1}}});
  t.notes = {content::plain("Least of three.")};
  return t;
}

} // namespace

TEST_CASE("headings go down by one, whatever level their look has") {
  Desk desk;
  auto cell = heading(4, "", "Inside a column", "in-column");
  const auto d = document({heading(1, "1", "Results", "a"), heading(4, "", "An item", "b"), heading(2, "1.1", "Marks", "c"),
                           heading(4, "", "Another item", "d"),
                           block(content::Columns{"halves", {{cell}, {paragraph("beside")}}}),
                           block(content::Together{{heading(2, "1.2", "Pits", "e")}}), heading(3, "", "A pit", "f")});
  const auto set_pages = set(d, desk);
  std::vector<std::string> levels;
  for (const auto &line : headings(set_pages))
    if (line[3] != '1') // the numbers are runs of their own
      levels.push_back(line);
  CHECK(levels == std::vector<std::string>{"H1 Results", "H2 An item", "H2 Marks", "H3 Another item", "H4 Inside a column",
                                           "H2 Pits", "H3 A pit"});
}

TEST_CASE("a section without a heading of the first level begins at the first level all the same") {
  Desk desk;
  CHECK(headings(set(document({heading(3, "", "Small print", "a"), heading(4, "", "Smaller", "b")}), desk)) ==
        std::vector<std::string>{"H1 Small print", "H2 Smaller"});
}

TEST_CASE("lists, key values, notes and captions stand in their elements") {
  Desk desk;
  content::List list;
  list.items = {content::plain("first")};
  list.text_style = "ragged";
  const auto d = document({block(list), block(content::KeyValues{{{"Beam", content::plain("2.08 m"), ""}}, "plain", 1}),
                           block(table(1))});
  const auto set_pages = set(d, desk);
  CHECK(path_to(set_pages, "first") == "section/list/list-item/list-body");
  CHECK(path_to(set_pages, "\xE2\x80\xA2") == "section/list/list-item/label");
  CHECK(path_to(set_pages, "Beam") == "section/list/list-item/label");
  CHECK(path_to(set_pages, "2.08 m") == "section/list/list-item/list-body");
  CHECK(path_to(set_pages, "Readings") == "section/group/table/caption");
  CHECK(path_to(set_pages, "Least of three") == "section/group/note");
  CHECK(path_to(set_pages, "stn") == "section/group/table/head/row/head-cell");
  CHECK(path_to(set_pages, "Row PW") == "section/group/table/body/row/head-cell");
  CHECK(path_to(set_pages, "s0") == "section/group/table/body/row/head-cell");
  CHECK(path_to(set_pages, "Test boat") == "furniture");
}

TEST_CASE("a cell that is left empty has its place; a group's head goes over all columns") {
  Desk desk;
  const auto set_pages = set(document({block(table(2))}), desk);
  int cells = 0;
  std::vector<int> across;
  for (const auto &item : set_pages.pages.at(0).items) {
    if (!item.tag)
      continue;
    if (item.tag->role == Role::cell && std::holds_alternative<page::Path>(item.what))
      ++cells;
    if (item.tag->role == Role::head_cell && item.tag->heads == page::Heads::column)
      across.push_back(item.tag->across);
  }
  CHECK(cells == 2);
  CHECK(std::ranges::max(across) == 2);
}

TEST_CASE("what a table repeats on its next page is furniture; its rows go on in the same body") {
  Desk desk;
  const auto set_pages = set(document({block(table(80))}), desk);
  REQUIRE(set_pages.pages.size() > 1);
  for (const auto *words : {"Readings", "stn", "Row PW", "Least of three"})
    CHECK(path_to(set_pages, words, 1) == "furniture");
  const auto body_on = [&](std::size_t sheet) {
    for (const auto &item : set_pages.pages.at(sheet).items)
      if (item.tag && item.tag->role == Role::head_cell && item.tag->heads == page::Heads::row)
        return page::text_of(item.tag->parent->parent);
    return std::string();
  };
  CHECK(body_on(0) == body_on(1));
}

TEST_CASE("a reference over two lines is one link, and says what is printed in each part") {
  Desk desk;
  content::Paragraph text;
  text.text = content::plain("See ");
  text.text.push_back(content::Reference{"target", content::Reference::Form::text,
                                         "words of a reference that are longer than the width of the page can hold on one "
                                         "line, so that they go on in the next one and end there", {}});
  text.text_style = "ragged";
  const auto set_pages = set(document({block(text), paragraph("there", "ragged", "target")}), desk);
  std::vector<std::string> elements, said;
  for (const auto &item : set_pages.pages.at(0).items)
    if (const auto *link = std::get_if<page::Link>(&item.what)) {
      elements.push_back(page::text_of(item.tag));
      said.push_back(link->said);
    }
  REQUIRE(elements.size() >= 2);
  CHECK(elements.front() == elements.back());
  CHECK(said.front().starts_with("words of a reference"));
  CHECK(said.back().ends_with("end there"));
}

TEST_CASE("a sign that says something is an element with its words; one that does not is decoration") {
  Desk desk;
  content::Paragraph text;
  text.text = {content::Sign{"meets", "meets the limit"}, content::Text{" 5.8"}};
  text.text_style = "ragged";
  auto silent = text;
  silent.text[0] = content::Sign{"meets", ""};
  const auto spoken_in = [&](const content::Paragraph &p) {
    std::vector<std::string> words;
    const auto pages = set(document({block(p)}), desk).pages;
    for (const auto &item : pages.at(0).items)
      if (item.tag && item.tag->role == Role::span)
        words.push_back(item.tag->spoken);
    return words;
  };
  CHECK(spoken_in(text) == std::vector<std::string>{"meets the limit"});
  CHECK(spoken_in(silent).empty());
}
