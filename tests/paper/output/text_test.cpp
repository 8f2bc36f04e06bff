#include <catch2/catch.hpp>

#include <charconv>
#include <cmath>
#include <limits>

#include "paper/output/sample.h"
#include "strakebook/paper/output/font_subset.h"
#include "strakebook/paper/output/pdf_number.h"
#include "strakebook/paper/output/pdf_text.h"

using namespace sample;
using strakebook::output::FontSubset;

namespace {

/// Where a reader of the PDF puts each glyph of one TJ array, in points from the run's origin.
std::vector<double> places(const std::string &array, const FontSubset &font, double size) {
  std::vector<double> found;
  double pen = 0;
  for (std::size_t at = array.find('[') + 1; array.at(at) != ']';) {
    if (array[at] != '<') {
      double back = 0;
      at = static_cast<std::size_t>(std::from_chars(&array[at], array.data() + array.size(), back).ptr -
                                    array.data());
      pen -= back / 1000 * size;
      continue;
    }
    for (++at; array[at] != '>'; at += 4) {
      unsigned code = 0;
      std::from_chars(&array[at], &array[at] + 4, code, 16);
      found.push_back(pen);
      pen += font.width_of(static_cast<std::uint16_t>(code)) / 1000 * size;
    }
    ++at;
  }
  return found;
}

std::string number(double value, int decimals = 3) {
  std::string text;
  strakebook::output::append_number(text, value, decimals);
  return text;
}

} // namespace

TEST_CASE("justified glyphs stand where the page has them, to the end of a long line") {
  std::string text;
  for (int i = 0; i < 60; ++i)
    text += "AV office ";
  auto line = run(serif, 9.75, 0, 0, text);
  for (auto &glyph : line.glyphs)
    if (text[glyph.cluster] == ' ')
      glyph.advance.v += 0.73337;
  FontSubset font(fonts()[serif]);
  std::string operators;
  strakebook::output::append_glyphs(operators, line, font);
  const auto found = places(operators, font, 9.75);
  REQUIRE(found.size() == line.glyphs.size());
  double pen = 0, worst = 0;
  for (std::size_t i = 0; i < found.size(); ++i) {
    worst = std::max(worst, std::abs(found[i] - pen));
    pen += line.glyphs[i].advance.v;
  }
  CHECK(worst < 0.0006); // half of the last digit of an adjustment at this size is 0.0005 pt
}

TEST_CASE("a glyph that stands for different texts has different codes") {
  FontSubset font(fonts()[sans]);
  const auto glyph = run(sans, 10, 0, 0, "A").glyphs[0].id;
  const auto capital = font.code_of(glyph, "A"), small = font.code_of(glyph, "a");
  CHECK(capital != small);
  CHECK(font.code_of(glyph, "A") == capital);
  CHECK(font.codes()[small].text == "a");
  CHECK(font.codes()[small].glyph == glyph);
  CHECK(font.width_of(small) == font.width_of(capital));
}

TEST_CASE("a missing character or a glyph out of range is a mistake of the program") {
  FontSubset font(fonts()[sans]);
  CHECK_THROWS_AS(font.code_of(0, "?"), std::logic_error);
  CHECK_THROWS_AS(font.code_of(65'000, "?"), std::logic_error);
}

TEST_CASE("several glyphs for one text carry it as ActualText") {
  auto two = run(sans, 10, 0, 0, "of");
  two.text = "\xC3\xA6";
  two.glyphs[1].cluster = 0;
  FontSubset font(fonts()[sans]);
  std::string operators;
  strakebook::output::append_glyphs(operators, two, font);
  CHECK_THAT(operators,
             Catch::StartsWith("/Span <</ActualText <feff00e6>>> BDC\n[") && Catch::EndsWith("EMC\n"));
}

TEST_CASE("a raised glyph is raised and the next one is not") {
  auto square = run(sans, 10, 0, 0, "m2m");
  square.glyphs[1].offset.y.v = -3;
  FontSubset font(fonts()[sans]);
  std::string operators;
  strakebook::output::append_glyphs(operators, square, font);
  CHECK_THAT(operators, Catch::Contains("3 Ts\n[") && Catch::Contains("0 Ts\n["));
}

TEST_CASE("numbers are short, rounded and never exponents") {
  CHECK(number(0) == "0");
  CHECK(number(-0.0004) == "0");
  CHECK(number(-0.0005) == "-0.001");
  CHECK(number(12.3456) == "12.346");
  CHECK(number(12.3, 1) == "12.3");
  CHECK(number(-7.05, 2) == "-7.05");
  CHECK(number(1e9) == "1000000000");
  CHECK_THROWS_AS(number(1.1e9), std::logic_error);
  CHECK_THROWS_AS(number(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
}
