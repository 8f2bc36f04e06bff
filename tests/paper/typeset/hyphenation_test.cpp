#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

#include "lines_support.h"
#include "strakebook/paper/typeset/hyphenation.h"
#include "strakebook/paper/typeset/piece_cuts.h"
#include "strakebook/paper/typeset/word_parts.h"
#include "support/temp_folder.h"

using namespace paper_test;
using namespace strakebook::typeset;

namespace {

std::string shown(const Desk &desk, const std::string &word) {
  std::string out;
  std::size_t from = 0;
  for (const auto at : desk.hyphenation.breaks(word, 2, 3)) {
    out += word.substr(from, at - from) + "-";
    from = at;
  }
  return out + word.substr(from);
}

std::string letters_of(const std::string &word) {
  const auto letters = dividable_letters(word);
  return word.substr(letters.begin, letters.end - letters.begin);
}

/// A width that holds `text` and a hair more.
double just(Desk &desk, const std::string &text, const char *style = "text") {
  return line_width(content::plain(text), desk.look.text[style], {}, desk.context()).v + 0.2;
}

std::vector<Fragment> narrow(Desk &desk, const std::string &text, double width, const char *style = "text") {
  return set_lines(content::plain(text), desk.look.text[style], {width}, {}, desk.context());
}

std::filesystem::path copy_of_fonts(const support::TempFolder &to) {
  for (const auto *name : {"SHA256SUMS", "hyph_en_GB.dic"})
    std::filesystem::copy_file(std::filesystem::path(STRAKEBOOK_ROOT "/fonts") / name, to.path / name);
  return to.path;
}

} // namespace

// The divisions are those of TeX's British patterns (ukhyphen.tex 1.0a), seen with the library's own example program.
TEST_CASE("words are divided as British patterns do") {
  Desk desk;
  CHECK(shown(desk, "underwriter") == "un-der-writer");
  CHECK(shown(desk, "measurement") == "meas-ure-ment");
  CHECK(shown(desk, "corrosion") == "cor-ro-sion");
  CHECK(shown(desk, "office") == "of-fice");
  CHECK(shown(desk, "through") == "through");
  CHECK(shown(desk, "table") == "table"); // two letters may not begin a line
}

TEST_CASE("letters of two bytes count once") {
  Desk desk;
  const auto &breaks = desk.hyphenation.breaks("m\u00E9t\u00E9orologist", 2, 3);
  for (const auto at : breaks)
    CHECK((static_cast<unsigned char>("m\u00E9t\u00E9orologist"[at]) & 0xC0) != 0x80);
}

TEST_CASE("a language without patterns divides nothing") {
  strakebook::base::Diagnostics sink;
  const auto none = Hyphenation::load(STRAKEBOOK_ROOT "/fonts", "tlh", sink);
  REQUIRE(none);
  CHECK(sink.ok());
  CHECK(none->breaks("underwriter", 2, 3).empty());
  CHECK(Hyphenation().breaks("underwriter", 2, 3).empty());
}

TEST_CASE("patterns that are not the recorded ones are refused") {
  const support::TempFolder folder;
  const auto fonts = copy_of_fonts(folder);
  std::ofstream(fonts / "hyph_en_GB.dic", std::ios::app) << ".z4\n";
  strakebook::base::Diagnostics sink;
  CHECK_FALSE(Hyphenation::load(fonts, "en-GB", sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all().front().code == Code::patterns_damaged);
}

TEST_CASE("names, codes, figures and words with a hyphen of their own stay whole") {
  CHECK(letters_of("(underwriter),") == "underwriter");
  CHECK(letters_of("\u201Cunderwriter\u201D") == "underwriter");
  CHECK(letters_of("Underwriter") == "");
  CHECK(letters_of("EN10029") == "");
  CHECK(letters_of("mm2readings") == "");
  CHECK(letters_of("wind-and-water") == "");
  CHECK(letters_of("https://example.org/readings") == "");
  CHECK(letters_of("12\u00A0millimetres") == "");
}

TEST_CASE("a divided word is drawn with a hyphen and read back with a soft one") {
  Desk desk;
  const double width = just(desk, "Surveyors of the under\u2010");
  const auto lines = narrow(desk, "Surveyors of the underwriter said no more.", width);
  REQUIRE(lines.size() == 2);
  CHECK(text_of_line(lines[0]) == "Surveyors of the under\u00AD");
  CHECK(text_of_line(lines[1]) == "writer said no more.");
  CHECK(lines[0].divided);
  CHECK_FALSE(lines[1].divided);
  const auto &run = std::get<page::Run>(lines[0].items.back().what);
  const auto hyphen = desk.fonts.shape(run.font, {10}, "\u2010", false).glyphs.at(0).id;
  CHECK(run.glyphs.back().id == hyphen);
  CHECK(right_end(lines[0]) == Approx(width).margin(0.001));
}

TEST_CASE("ragged text is not divided, but a soft hyphen is obeyed everywhere") {
  Desk desk;
  const double width = just(desk, "Surveyors of the under\u2010", "ragged");
  CHECK(text_of_line(narrow(desk, "Surveyors of the underwriter.", width, "ragged")[0]) == "Surveyors of the");
  const auto lines = narrow(desk, "Surveyors of the under\u00ADwriter said no more.", width, "ragged");
  CHECK(text_of_line(lines[0]) == "Surveyors of the under\u00AD");
  CHECK(text_of_line(narrow(desk, "the under\u00ADwriter", 300)[0]) == "the underwriter");
}

TEST_CASE("what may be divided is drawn as if it could not be") {
  Desk desk;
  for (const auto *word : {"office", "different", "underwriter", "efficiency", "affixed"}) {
    auto style = desk.look.text["text"];
    const auto pieces = pieces_of(content::plain(word), style, {}, desk.context());
    const auto whole = desk.fonts.shape(desk.fonts.index_of("serif"), {10}, word, false);
    std::vector<std::uint32_t> ids;
    double width = 0;
    for (const auto &piece : pieces)
      for (const auto &glyph : piece.shaped.glyphs) {
        ids.push_back(glyph.id);
        width += glyph.advance.v;
      }
    REQUIRE(ids.size() == whole.glyphs.size());
    for (std::size_t i = 0; i < ids.size(); ++i)
      CHECK(ids[i] == whole.glyphs[i].id);
    CHECK(width == Approx(whole.width.v));
    CHECK(pieces.size() > 1);
  }
}

TEST_CASE("a ligature that is parted leaves its letters on both lines") {
  Desk desk;
  const int serif = desk.fonts.index_of("serif");
  Piece word;
  word.text = "office";
  word.font = serif;
  word.size = {10};
  const auto shape = [&](Piece &piece) {
    piece.shaped = desk.fonts.shape(serif, {10}, piece.text, false);
    piece.width = piece.shaped.width;
  };
  shape(word);
  for (std::size_t at = 1; at < word.text.size(); ++at) {
    const auto pieces = divided(word, {at}, shape);
    std::string before, after;
    bool behind = false;
    for (const auto &piece : pieces)
      if (piece.kind == Piece::Kind::hyphen) {
        before += piece.division->before.text;
        after += piece.division->after.text;
        behind = true;
      } else {
        (behind ? after : before) += piece.text;
      }
    CHECK(before == word.text.substr(0, at) + "\u00AD");
    CHECK(after == word.text.substr(at));
  }
}
