#include <catch2/catch.hpp>

#include "paper/output/sample.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/output/reading_text.h"
#include "strakebook/paper/output/svg_text.h"

using namespace sample;
namespace output = strakebook::output;

namespace {

std::string svg_of(const page::Document &document, std::size_t page, output::PictureWords words = {}) {
  return output::svg(document, output::sheet(document, page), images(), words);
}

/// One page with a block "a" of two runs and what stands between them, and a block "b".
page::Document two_blocks() {
  auto made = document();
  made.pages.resize(1);
  made.pages[0].items = {item(tag(page::Role::figure), "a", run(serif, 10, 100, 200, "left")),
                         item({}, "", line(100, 210, 180, 210)),
                         item(tag(page::Role::figure), "a", run(serif, 10, 150, 230, "right")),
                         item(tag(page::Role::paragraph), "b", run(serif, 10, 100, 400, "elsewhere"))};
  return made;
}

} // namespace

TEST_CASE("text for XML: its own signs as entities, what it cannot hold as the replacement character") {
  CHECK(output::xml_text("a < b & \"c\" > d") == "a &lt; b &amp; &quot;c&quot; &gt; d");
  CHECK(output::xml_text("tab\tline\n\x01\x1b end") == "tab\tline\n\xEF\xBF\xBD\xEF\xBF\xBD end");
  CHECK(output::xml_text("\xEF\xBF\xBF\xEF\xBF\xBE") == "\xEF\xBF\xBD\xEF\xBF\xBD");
  CHECK(output::xml_text("5.3 mm \xE2\x89\xA4 \xC3\xA9") == "5.3 mm \xE2\x89\xA4 \xC3\xA9");
}

TEST_CASE("names of surfaces and images are counted in the file, and nothing else is touched") {
  CHECK(output::renumbered(R"(<g id="surface41"><use href="#image7"/><image id="image7"/></g> surface41 "#imagery")") ==
        R"(<g id="part1"><use href="#part2"/><image id="part2"/></g> surface41 "#imagery")");
}

TEST_CASE("title and description come first in the root, and an empty one not at all") {
  CHECK(output::with_words("<svg a=\"1\">\n<g/></svg>", "T & t", "D") ==
        "<svg a=\"1\">\n<title>T &amp; t</title>\n<desc>D</desc>\n<g/></svg>");
  CHECK(output::with_words("<svg a=\"1\">\n<g/></svg>", "", "") == "<svg a=\"1\">\n<g/></svg>");
  CHECK_THROWS_AS(output::with_words("<html>", "t", "d"), std::logic_error);
}

TEST_CASE("the same page gives the same SVG, whatever was drawn before") {
  const auto first = svg_of(document(), 0, {"A title", "words"});
  svg_of(document(), 1);
  CHECK(svg_of(document(), 0, {"A title", "words"}) == first);
  CHECK(first.find("<title>A title</title>\n<desc>words</desc>") != std::string::npos);
  CHECK(first.find("<text") == std::string::npos); // outlines: no font is needed to read it
}

TEST_CASE("a block cut out of its page is its ink with a margin, and what stands inside it") {
  const auto made = two_blocks();
  const auto view = output::cut_out(made, 0, {"a"}, {}, {5});
  REQUIRE(view);
  CHECK(view->first == 0);
  CHECK(view->last == 3);
  CHECK(view->box.at.x.v == Approx(95).margin(1));
  CHECK(view->box.right().v == Approx(185).margin(1)); // the rule's end and the margin
  CHECK(view->box.at.y.v > 200 - 10 - 5);
  CHECK(view->box.bottom().v < 230 + 5 + 5);
  CHECK_FALSE(output::cut_out(made, 0, {"c"}, {}, {5}));
  const auto all = output::cut_out(made, 0, {"a", "b"}, {}, {1000});
  REQUIRE(all);
  CHECK(all->box == output::sheet(made, 0).box); // never more than the sheet
}

TEST_CASE("a block that leaves no ink is not cut out") {
  auto made = two_blocks();
  made.pages[0].items = {item({}, "a", page::Anchor{{{10}, {10}}})};
  CHECK_FALSE(output::cut_out(made, 0, {"a"}, {}, {5}));
}

TEST_CASE("a page is read in its order, and a drawing said once by its words") {
  const auto made = two_blocks();
  CHECK(output::reading_text(made.pages[0], {}) == "left right elsewhere");
  CHECK(output::reading_text(made.pages[0], {{"a", "Two words."}}) == "Two words. elsewhere");
}
