#include <catch2/catch.hpp>

#include "lines_support.h"
#include "strakebook/paper/typeset/ties.h"
#include "strakebook/paper/typeset/word_parts.h"

using namespace paper_test;
using namespace strakebook::typeset;

namespace {

/// Whether the two halves of `text`, parted at "|", ever stand on two lines, at any width that could hold them.
bool parts(const std::string &text, const char *style = "ragged") {
  Desk desk;
  const auto bar = text.find('|');
  const std::string left = text.substr(0, bar), right = text.substr(bar + 1);
  const std::string whole = "here before it " + left + " " + right + " and more after it";
  const auto start = line_width(content::plain(left + " " + right), desk.look.text[style], {}, desk.context());
  for (double width = start.v + 1; width < 260; width += 2)
    for (const auto &line :
         set_lines(content::plain(whole), desk.look.text[style], {width}, {}, desk.context()))
      if (text_of_line(line).ends_with(left))
        return true;
  return false;
}

} // namespace

TEST_CASE("what belongs together stays on one line though the blank is plain") {
  for (const auto *style : {"ragged", "text"})
    for (const auto *held :
         {"2.7|mm", "(12|mm),", "25|%.", "p.|14", "Table|4", "Table|A2", "14|October", "5.8|to 5.9", "5.8 to|5.9", "J.|Smith",
          "J. R.|Smith", "\u2192|Table", "PW|9", "so|\u2013", "Mr|Smith", "5.8/5.7|mm", "1/2|in", "1|3/16 in"}) {
      INFO(held);
      CHECK_FALSE(parts(held, style));
    }
}

TEST_CASE("what only looks like it may part") {
  for (const auto *loose : {"the|mm", "pp|and", "Table|of", "October|2026", "to|5.9", "a.|Smith", "ABCD|9", "plate|12", "5.8,|mm"}) {
    INFO(loose);
    CHECK(parts(loose));
  }
}

TEST_CASE("a dash that opens a text keeps its first word") {
  Desk desk;
  const auto &ragged = desk.look.text["ragged"];
  const auto width = line_width(content::plain("\u2013 overplated"), ragged, {}, desk.context());
  const auto lines = set_lines(content::plain("\u2013 overplated, seen"), ragged, width * 1.1, {}, desk.context());
  CHECK(text_of_line(lines.front()).starts_with("\u2013 overplated"));
}

TEST_CASE("what is wider than its column parts at its blank before its letters") {
  Desk desk;
  const auto lines =
      set_lines(content::plain("12345678 mm"), desk.look.text["ragged"], {46}, {}, desk.context());
  REQUIRE(lines.size() == 2);
  CHECK(text_of_line(lines[0]) == "12345678");
}

TEST_CASE("ties reach over a change of letter") {
  Desk desk;
  const auto text = content::plain("the least is ") + content::strong("2.7") + content::plain(" mm here");
  for (double width = 40; width < 120; width += 1)
    for (const auto &line : set_lines(text, desk.look.text["ragged"], {width}, {}, desk.context()))
      CHECK_FALSE(text_of_line(line).ends_with("2.7"));
}

TEST_CASE("long paths and digests end a line at sensible places, without a hyphen") {
  const strakebook::style::LongWords rule{20, "/\\_.=&?", 8};
  const std::string path = "surveys/2026/long_boat/readings.csv";
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (const auto to : open_breaks(path, rule)) {
    parts.push_back(path.substr(from, to - from));
    from = to;
  }
  CHECK(parts == std::vector<std::string>{"surveys/", "2026/", "long_", "boat/", "readings."});
  CHECK(open_breaks("a/b.csv", rule).empty());
  CHECK(open_breaks("0123456789abcdef0123456789abcdef", rule) == std::vector<std::size_t>{8, 16, 24});
  CHECK(open_breaks("https://example.org/boats", rule) == std::vector<std::size_t>{8, 16, 20});
}

TEST_CASE("fractions of an inch") {
  for (const auto *fraction : {"3/16", "1/2", "63/64", "15/32"})
    CHECK(is_fraction(fraction));
  for (const auto *other : {"3/10", "16/16", "5.8/5.7", "1/128", "/16", "3/", "12", "6/8x", "0/4"})
    CHECK_FALSE(is_fraction(other));
  Desk desk;
  const auto glyphs = [&](const char *text) {
    const auto line = set_line(content::plain(text), desk.look.text["ragged"], {}, desk.context());
    std::vector<std::uint32_t> ids;
    for (const auto &item : line.items)
      for (const auto &glyph : std::get<page::Run>(item.what).glyphs)
        ids.push_back(glyph.id);
    CHECK(text_of_line(line) == text);
    return ids;
  };
  const auto fraction = glyphs("3/16 in"), ratio = glyphs("3/16 mm");
  CHECK(fraction.at(0) != ratio.at(0)); // small figures
  CHECK(glyphs("3/16\u00A0in").at(0) == fraction.at(0));
}

TEST_CASE("names of files, addresses and figures that only look like words are not divided") {
  for (const auto *whole : {"readings.csv", "example.org", "measurements.yaml"}) {
    INFO(whole);
    const auto letters = dividable_letters(whole);
    CHECK(letters.begin == letters.end);
  }
  const auto sentence = dividable_letters("measurements.");
  CHECK(sentence.end - sentence.begin == 12);
  CHECK(open_breaks("\u00BD\u2013\u00BE", {}).empty());
  CHECK_FALSE(open_breaks("wind\u2013water", {}).empty());
}
