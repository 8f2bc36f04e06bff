#include <catch2/catch.hpp>

#include "pages_support.h"
#include "strakebook/paper/typeset/line.h"

using namespace paper_test;

namespace {

content::Block reference(const std::string &target, content::Reference::Form form) {
  return block(content::Paragraph{
      {content::Text{"see "}, content::Reference{target, form, "the worst mark", {}}}, "ragged", {}});
}

} // namespace

TEST_CASE("references print where their target landed, forwards and backwards, and lead there") {
  Desk desk;
  using Form = content::Reference::Form;
  auto d = document({reference("b", Form::page), reference("b", Form::label_page),
                     reference("b", Form::text_page), reference("b", Form::label), reference("b", Form::text),
                     block(content::PageBreak{}), opaque(1, "b")});
  d.names["b"] = "Table 4";
  const auto set_document = set(d, desk);
  REQUIRE(desk.sink.ok());
  const auto text = text_of(set_document.pages[0]);
  CHECK(text == "see |p.\u00A02\nsee |Table\u00A04, p.\u00A02\nsee |the worst mark, p.\u00A02\nsee "
                "|Table\u00A04\nsee |the worst mark\n");
  int links = 0;
  for (const auto &item : set_document.pages[0].items)
    if (const auto *link = std::get_if<page::Link>(&item.what)) {
      CHECK(link->target == "b");
      CHECK(link->box.size.width.v > 10);
      ++links;
    }
  CHECK(links == 5);
}

TEST_CASE("a reference to nothing is reported") {
  Desk desk;
  set(document({reference("nowhere", content::Reference::Form::page)}), desk);
  CHECK(count_code(desk, Code::dangling_reference) == 1);
}

TEST_CASE("the contents name the page of every heading and lead to it") {
  Desk desk;
  auto d = document({block(content::Contents{2}), heading(1, "1", "The answer", "s1"), opaque(47),
                     heading(2, "1.1", "Wastage", "s11"), opaque(1), heading(3, "", "Item", "i")});
  const auto set_document = set(d, desk);
  REQUIRE(desk.sink.ok());
  REQUIRE(set_document.pages.size() == 3);
  const auto text = text_of(set_document.pages[0]);
  CHECK(text.find("1|The answer|2|1.1|Wastage|3\n") != std::string::npos); // in two columns, read down the left one first
  REQUIRE(set_document.outline.size() == 2);
  CHECK(set_document.outline[1].title == "1.1 Wastage");
  CHECK(set_document.outline[1].level == 2);
  CHECK(anchor_of(set_document.pages[2], set_document.outline[1].target) != nullptr);
}

TEST_CASE("page numbers that move their own target for ever are reported, not chased") {
  Desk desk;
  // The last line of a paragraph holds "p. 9" but not "p. 10". With three lines the paragraph cannot be
  // parted and goes to page 9, so that the target (48 lines) goes to page 10; with four, two lines stay on
  // page 8 and the target fits on page 9: whatever is printed is wrong.
  const auto width = [&](const std::string &text) {
    return strakebook::typeset::line_width(content::plain(text), desk.look.text["ragged"], {}, desk.context())
        .v;
  };
  std::string filler = "i";
  while (width(filler + "i p.\u00A09") <= 400)
    filler += "i";
  REQUIRE(width(filler + " p.\u00A010") > 400);
  std::vector<content::Block> blocks;
  for (int i = 0; i < 7; ++i) {
    blocks.push_back(opaque(1));
    blocks.push_back(block(content::PageBreak{}));
  }
  blocks.push_back(opaque(48));
  blocks.push_back(block(content::Paragraph{
      {content::Text{"one"}, content::LineBreak{}, content::Text{"two"}, content::LineBreak{},
       content::Text{filler + " "}, content::Reference{"target", content::Reference::Form::page, {}, {}}},
      "ragged",
      {}}));
  blocks.push_back(opaque(48, "target"));
  set(document(blocks), desk);
  CHECK(count_code(desk, Code::references_unstable) == 1);
}
