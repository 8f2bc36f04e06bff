#include <catch2/catch.hpp>

#include "lines_support.h"
#include "strakebook/paper/typeset/capitals.h"

using namespace paper_test;
using namespace strakebook::typeset;

TEST_CASE("runs of a line, one after the other, are its text") {
  Desk desk;
  const auto text =
      content::plain("worst ") + content::strong("2.7\u00A0mm") + content::plain(" under pit P11");
  const auto line = set_line(text, desk.look.text["ragged"], {}, desk.context());
  CHECK(text_of_line(line) == "worst 2.7\u00A0mm under pit P11");
  CHECK(line.items.size() == 3);
  CHECK(right_end(line) == Approx(line.size.width.v));
}

TEST_CASE("justified lines end at the edge, all but the last") {
  Desk desk;
  const auto lines =
      set_lines(content::plain("The underwriter insures on 4.0 mm, and one active pit in the starboard "
                               "chine leaves 2.7. The sides and chines have otherwise lost steel evenly."),
                desk.look.text["text"], {200}, {}, desk.context());
  REQUIRE(lines.size() > 2);
  for (std::size_t i = 0; i + 1 < lines.size(); ++i)
    CHECK(right_end(lines[i]) == Approx(200).margin(0.001));
  CHECK(right_end(lines.back()) < 199);
}

TEST_CASE("a number and its unit never part") {
  Desk desk;
  for (double width = 40; width < 160; width += 1) {
    const auto lines = set_lines(content::plain("lost 2.2\u00A0mm of 6.0\u202Fmm by station 13\u20114 here"),
                                 desk.look.text["ragged"], {width}, {}, desk.context());
    for (const auto &line : lines) {
      const auto text = text_of_line(line);
      CHECK((text.find("2.2") == std::string::npos) == (text.find("2.2\u00A0mm") == std::string::npos));
      CHECK((text.find("6.0") == std::string::npos) == (text.find("6.0\u202Fmm") == std::string::npos));
      CHECK((text.find("13") == std::string::npos) == (text.find("13\u20114") == std::string::npos));
    }
  }
}

TEST_CASE("an en dash breaks between words, not between figures") {
  Desk desk;
  const auto lines = [&](const char *text) {
    return set_lines(content::plain(text), desk.look.text["ragged"], {45}, {}, desk.context()).size();
  };
  CHECK(lines("port\u2013starboard") == 2);
  const auto first =
      set_lines(content::plain("port\u2013starboard"), desk.look.text["ragged"], {45}, {}, desk.context())
          .front();
  CHECK(text_of_line(first) == "port\u2013");
  const auto figures =
      set_lines(content::plain("at 100\u2013200"), desk.look.text["ragged"], {40}, {}, desk.context());
  REQUIRE(figures.size() == 2);
  CHECK(text_of_line(figures[1]) == "100\u2013200");
}

TEST_CASE("breaks are the best for the whole paragraph, not line by line") {
  Desk desk;
  auto style = desk.look.text["ragged"];
  const double space = line_width(content::plain("a b"), style, {}, desk.context()).v -
                       line_width(content::plain("ab"), style, {}, desk.context()).v;
  const auto width_of = [&](const char *word) {
    return line_width(content::plain(word), style, {}, desk.context()).v;
  };
  // "aaa bb" fits the first line; greedy setting would leave "cc" alone before the long word.
  const double width = width_of("aaa") + space + width_of("bb") + 0.5;
  REQUIRE(width > width_of("cc") + 10);
  REQUIRE(width > width_of("ddddd"));
  REQUIRE(width < width_of("cc") + space + width_of("ddddd"));
  const auto lines = set_lines(content::plain("aaa bb cc ddddd"), style, {width}, {}, desk.context());
  REQUIRE(lines.size() == 3);
  CHECK(text_of_line(lines[0]) == "aaa");
  CHECK(text_of_line(lines[1]) == "bb cc");
}

TEST_CASE("a character no face has is reported once, at the block, with its number") {
  Desk desk;
  const auto pages = set(document({paragraph("depth \u4E2D here")}), desk).pages;
  REQUIRE(count_code(desk, Code::glyph_missing) == 1);
  CHECK(desk.sink.all().front().message.find("U+4E2D") != std::string::npos);
}

TEST_CASE("the hyphen that does not break is drawn though the faces lack it") {
  Desk desk;
  const auto hard = desk.fonts.shape(0, {10}, "a\u2011b", false);
  const auto soft = desk.fonts.shape(0, {10}, "a\u2010b", false);
  CHECK_FALSE(hard.missing);
  CHECK(hard.glyphs.at(1).id == soft.glyphs.at(1).id);
}

TEST_CASE("tabular figures are of one width, and a word is the sum of its glyphs") {
  Desk desk;
  const int serif = desk.fonts.index_of("serif");
  CHECK(desk.fonts.shape(serif, {10}, "111", true).width.v ==
        Approx(desk.fonts.shape(serif, {10}, "888", true).width.v));
  CHECK(desk.fonts.shape(serif, {20}, "AV", false).width.v ==
        Approx(2 * desk.fonts.shape(serif, {10}, "AV", false).width.v));
  CHECK(desk.fonts.shape(serif, {10}, "AV", false).width.v <
        desk.fonts.shape(serif, {10}, "A", false).width.v +
            desk.fonts.shape(serif, {10}, "V", false).width.v);
}

TEST_CASE("a font that is not the recorded one is refused") {
  strakebook::base::Diagnostics sink;
  CHECK_FALSE(FontSet::load(STRAKEBOOK_ROOT "/fonts", {{"licence", "OFL-SourceSans3.txt"}}, sink));
  CHECK(sink.errors() == 1);
  CHECK(sink.all().front().code == Code::font_damaged);
}

TEST_CASE("capitals are drawn and extracted alike") {
  CHECK(capitals("Wörst remaining, straße \u0161\u017E") == "WÖRST REMAINING, STRASSE \u0160\u017D");
  CHECK(capitals("2.7 mm ÷ \u2013") == "2.7 MM ÷ \u2013");
}
