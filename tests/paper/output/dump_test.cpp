#include <catch2/catch.hpp>

#include "paper/output/sample.h"

using namespace sample;

TEST_CASE("a page as text: one item a line, positions to a hundredth") {
  page::Page small{.size = {{200}, {100}}, .frames = {{"body", {{{10}, {10}}, {{180}, {80}}}}}, .items = {}};
  auto word = run(sans, 8, 20.004, 30.006, "say \"6\"");
  for (auto &glyph : word.glyphs)
    glyph.advance = {4};
  word.colour = {1, 0.5, 0};
  small.items = {
      item(tag(page::Role::cell), "mark/PW 9", word), item({}, "", line(-0.001, 1, 2, 3)),
      item(tag(page::Role::figure), "photo/1", page::Picture{picture(8, 6).ref, {{{1}, {2}}, {{3}, {4}}}}),
      item(tag(page::Role::heading), "part/1", page::Anchor{{{5}, {6}}}),
      item(tag(page::Role::link), "link/1", page::Link{{{{1}, {2}}, {{3}, {4}}}, "part/1"})};
  CHECK(page::dump(small) ==
        "size 200.00x100.00\n"
        "frame body 10.00,10.00 180.00x80.00\n"
        "cell.0 \"mark/PW 9\" text 20.00,30.01 w 28.00 font 1 8.00 #ff8000 \"say \\\"6\\\"\"\n"
        "- path M 0.00,1.00 L 2.00,3.00 stroke 0.75 #333333 dash 3.00 1.50\n"
        "figure.0 \"photo/1\" picture 1.00,2.00 3.00x4.00 picture-8x6 8x6\n"
        "heading.0 \"part/1\" anchor 5.00,6.00\n"
        "link.0 \"link/1\" link 1.00,2.00 3.00x4.00 to \"part/1\"\n");
}

TEST_CASE("a document as text begins with what it is and numbers its pages") {
  const auto text = page::dump(document());
  CHECK_THAT(text, Catch::StartsWith("title \"Hull <plate> & \xC2\xBD\"\nauthor \"A Surveyor\"\n"));
  CHECK_THAT(text, Catch::Contains("\nfont 1 SourceSans3-Regular\n") &&
                       Catch::Contains("\noutline 1 \"End\" to \"part/2\"\n"));
  CHECK_THAT(text, Catch::Contains("\npage 2\nsize 841.89x595.28\n") && Catch::Contains(" turned w "));
}
