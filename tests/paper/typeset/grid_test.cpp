#include <catch2/catch.hpp>

#include <cmath>

#include "pages_support.h"

using namespace paper_test;

// The grid of the test look is 12 pt, a half step 6; text is 10/12 and stands on it here.

namespace {

constexpr double body_top = 50, half = 6;

/// How far every baseline of serif text is from the half grid of text that begins at the top of the body.
std::vector<double> off_grid(const page::Document &pages, const Desk &desk) {
  const double first = 6 + 10 * 0.353; // half the leading and from the middle of a line to its baseline
  std::vector<double> off;
  for (const auto &p : pages.pages)
    for (const auto &item : p.items)
      if (const auto *run = std::get_if<page::Run>(&item.what); run && run->font == desk.fonts.index_of("serif")) {
        const double steps = (run->origin.y.v - body_top - first) / half;
        off.push_back(std::abs(steps - std::round(steps)) * half);
      }
  return off;
}

void all_on_grid(std::vector<content::Block> blocks, std::size_t at_least) {
  Desk desk;
  desk.look.text["text"].on_grid = true;
  desk.look.text["text"].space_after = {5};
  const auto pages = set(document(std::move(blocks)), desk);
  REQUIRE(desk.sink.ok());
  const auto off = off_grid(pages, desk);
  CHECK(off.size() >= at_least);
  for (const double distance : off)
    CHECK(distance < 0.001);
}

const std::string words = "The underwriter insures on four millimetres, and one active pit in the starboard chine leaves less. "
                          "The sides and chines have otherwise lost their steel evenly since the plating was laid.";

} // namespace

TEST_CASE("text stands on the grid under anything") {
  all_on_grid({paragraph(words, "text"), opaque(1), block(content::Space{"list-gap"}), paragraph(words, "text"),
               heading(2, "1", "A head", "h"), paragraph(words, "text"), paragraph("a note", "caption"),
               paragraph(words, "text")},
              8);
}

TEST_CASE("text stands on the grid in columns, whatever stands beside it") {
  content::Columns columns{"text-side",
                           {{paragraph(words, "text"), opaque(1), paragraph(words, "text")},
                            {heading(2, "1", "Larger than text", "h"), paragraph(words, "text")}}};
  content::Columns headed{"text-side",
                          {{heading(1, "1", "A head", "k"), paragraph(words, "text")}, {paragraph(words, "text")}}};
  all_on_grid({opaque(1), block(columns), paragraph("a note", "caption"), block(headed), block(content::Together{{block(columns)}})}, 16);
}

TEST_CASE("items of a list of text stand on the grid") {
  content::List list;
  for (int i = 0; i < 4; ++i)
    list.items.push_back(content::plain(words));
  all_on_grid({paragraph("a note", "caption"), block(list)}, 4);
}

TEST_CASE("what brings text to the grid stands above its head, not under it") {
  Desk desk;
  desk.look.text["text"].on_grid = true;
  const auto pages =
      set(document({paragraph("a note", "caption"), heading(2, "1", "A head", "h"), paragraph(words, "text", "p")}), desk).pages;
  CHECK(y_of_anchor(pages[0], "p") - y_of_anchor(pages[0], "h") == Approx(18 + 6)); // its height and its space
}

