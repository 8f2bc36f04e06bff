#include <catch2/catch.hpp>

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <ft2build.h>
#include <map>
#include <png.h>
#include <sstream>
#include FT_FREETYPE_H
#include FT_OUTLINE_H

#include "strakebook/base/text.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/typeset/line.h"
#include "support/paper_style.h"
#include "support/temp_folder.h"

using namespace strakebook;

// The signs of the trade as they reach paper: the PDF drawn by another program beside the same glyphs drawn by FreeType.

namespace {

constexpr double size = 96; // points, at 72 dots an inch: one dot a point
constexpr int cell = 240, left_in_cell = 70, base_in_cell = 160, across = 6;

struct Sign {
  int font = 0;
  page::Glyph glyph;
  std::string text;
};

bool installed(const std::string &tool) {
  const bool found = std::system(("command -v " + tool + " >/dev/null 2>&1").c_str()) == 0;
  if (!found) WARN("SKIPPED: " << tool << " is not installed; nothing was judged");
  return found;
}

/// One glyph each, of every face: what is one character, and the glyphs of 3/16 as a fraction.
std::vector<Sign> signs_of(const typeset::FontSet &fonts) {
  std::vector<Sign> signs;
  for (int face = 0; face < static_cast<int>(fonts.fonts().size()); ++face) {
    for (const auto *text : {"\u00BD", "\u00BC", "\u00BE", "\u2212", "\u2264", "\u2265", "\u00B0", "\u00B2", "\u00B3", "\u2192",
                             "\u2190", "\u00B1", "\u2013", "\u2014", "\u00B5", "\u00D7", "\u2010", "1", "8"}) {
      const auto shaped = fonts.shape(face, {size}, text, true);
      REQUIRE_FALSE(shaped.missing);
      REQUIRE(shaped.glyphs.size() == 1);
      signs.push_back({face, shaped.glyphs.front(), text});
    }
    const std::string fraction = "3/16";
    for (const auto &glyph : fonts.shape(face, {size}, fraction, typeset::FontSet::Figures::fraction).glyphs)
      signs.push_back({face, glyph, fraction.substr(glyph.cluster, 1)});
  }
  return signs;
}

page::Document sheet_of(const std::vector<Sign> &signs, const typeset::FontSet &fonts) {
  page::Document sheet;
  sheet.fonts = fonts.fonts();
  const int rows = (static_cast<int>(signs.size()) + across - 1) / across;
  page::Page one;
  one.size = {{across * cell}, {static_cast<double>(rows * cell)}};
  one.frames.push_back({"body", {{}, one.size}});
  for (std::size_t i = 0; i < signs.size(); ++i) {
    page::Run run;
    run.font = signs[i].font;
    run.size = {size};
    const int at = static_cast<int>(i);
    run.origin = {{static_cast<double>(at % across * cell + left_in_cell)}, {static_cast<double>(at / across * cell + base_in_cell)}};
    run.text = signs[i].text;
    run.glyphs = {signs[i].glyph};
    run.glyphs.front().cluster = 0;
    one.items.push_back({page::under({}, {.role = page::Role::paragraph, .key = at}), "sign/" + std::to_string(i), std::move(run)});
  }
  sheet.pages.push_back(std::move(one));
  return sheet;
}

struct Grey {
  int width = 0, height = 0;
  std::vector<unsigned char> dots; ///< 0 is ink, 255 is paper

  int ink(int x, int y) const { return 255 - dots[static_cast<std::size_t>(y * width + x)]; }
};

Grey read_png(const std::filesystem::path &file) {
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  REQUIRE(png_image_begin_read_from_file(&image, file.c_str()) != 0);
  image.format = PNG_FORMAT_GRAY;
  Grey grey{static_cast<int>(image.width), static_cast<int>(image.height), {}};
  grey.dots.resize(PNG_IMAGE_SIZE(image));
  const png_color white{255, 255, 255};
  REQUIRE(png_image_finish_read(&image, &white, grey.dots.data(), 0, nullptr) != 0);
  return grey;
}

/// FreeType's own raster of a glyph, without hinting.
class Drawn {
public:
  explicit Drawn(const page::Font &font) : bytes_(font.bytes) {
    REQUIRE(FT_Init_FreeType(&library_) == 0);
    REQUIRE(FT_New_Memory_Face(library_, reinterpret_cast<const FT_Byte *>(bytes_->data()),
                               static_cast<FT_Long>(bytes_->size()), 0, &face_) == 0);
    REQUIRE(FT_Set_Char_Size(face_, 0, static_cast<FT_F26Dot6>(size * 64), 72, 72) == 0);
  }
  ~Drawn() {
    FT_Done_Face(face_);
    FT_Done_FreeType(library_);
  }
  Drawn(const Drawn &) = delete;
  Drawn &operator=(const Drawn &) = delete;

  /// Ink of every dot of a cell, row by row.
  std::vector<int> cell_of(const page::Glyph &glyph) {
    REQUIRE(FT_Load_Glyph(face_, glyph.id, FT_LOAD_NO_HINTING | FT_LOAD_NO_BITMAP) == 0);
    const FT_Vector moved{std::lround(glyph.offset.x.v * 64), std::lround(-glyph.offset.y.v * 64)};
    FT_Outline_Translate(&face_->glyph->outline, moved.x, moved.y);
    REQUIRE(FT_Render_Glyph(face_->glyph, FT_RENDER_MODE_NORMAL) == 0);
    std::vector<int> ink(cell * cell);
    const auto &bitmap = face_->glyph->bitmap;
    for (int y = 0; y < static_cast<int>(bitmap.rows); ++y)
      for (int x = 0; x < static_cast<int>(bitmap.width); ++x) {
        const int to_x = left_in_cell + face_->glyph->bitmap_left + x, to_y = base_in_cell - face_->glyph->bitmap_top + y;
        REQUIRE((to_x >= 0 && to_x < cell && to_y >= 0 && to_y < cell));
        ink[static_cast<std::size_t>(to_y * cell + to_x)] = bitmap.buffer[y * bitmap.pitch + x];
      }
    return ink;
  }

private:
  std::shared_ptr<const std::string> bytes_;
  FT_Library library_{};
  FT_Face face_{};
};

std::string output_of(const std::string &command) {
  const support::TempFolder folder;
  const auto file = folder.path / "said";
  REQUIRE(std::system((command + " > " + file.string() + " 2>/dev/null").c_str()) == 0);
  std::ifstream in(file);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string without_blanks(std::string text) {
  std::erase_if(text, [](char c) { return c == ' ' || c == '\n' || c == '\f' || c == '\r'; });
  return text;
}

std::filesystem::path written(const support::TempFolder &folder, const page::Document &sheet) {
  base::Diagnostics sink;
  const auto bytes = output::pdf(sheet, {}, sink);
  REQUIRE(sink.ok());
  return folder.write("signs.pdf", bytes);
}

} // namespace

TEST_CASE("signs of the trade have on paper the ink that their face gives them") {
  if (!installed("pdftocairo")) return;
  paper_test::Desk desk;
  const auto signs = signs_of(desk.fonts);
  const support::TempFolder folder;
  const auto pdf = written(folder, sheet_of(signs, desk.fonts));
  const auto raster = folder.path / "signs";
  REQUIRE(std::system(("pdftocairo -png -gray -r 72 -singlefile " + pdf.string() + " " + raster.string()).c_str()) == 0);
  const Grey paper = read_png(raster.string() + ".png");
  std::map<int, std::unique_ptr<Drawn>> faces;
  for (std::size_t i = 0; i < signs.size(); ++i) {
    auto &face = faces[signs[i].font];
    if (!face) face = std::make_unique<Drawn>(desk.fonts.fonts()[static_cast<std::size_t>(signs[i].font)]);
    const auto wanted = face->cell_of(signs[i].glyph);
    const int x0 = static_cast<int>(i) % across * cell, y0 = static_cast<int>(i) / across * cell;
    double ink = 0, differs = 0;
    for (int y = 0; y < cell; ++y)
      for (int x = 0; x < cell; ++x) {
        const int want = wanted[static_cast<std::size_t>(y * cell + x)];
        ink += want;
        differs += std::abs(want - paper.ink(x0 + x, y0 + y));
      }
    INFO(desk.fonts.fonts()[static_cast<std::size_t>(signs[i].font)].name << " \"" << signs[i].text << "\": "
         << 100 * differs / ink << " % of its ink differs");
    CHECK(ink > 255 * 50);
    CHECK(differs < 0.03 * ink);
  }
}

TEST_CASE("signs of the trade are read back as they were written") {
  if (!installed("pdftotext") || !installed("mutool")) return;
  paper_test::Desk desk;
  const auto signs = signs_of(desk.fonts);
  std::string all;
  for (const auto &sign : signs) all += sign.text == "\u2010" ? "-" : sign.text;
  const support::TempFolder folder;
  const auto pdf = written(folder, sheet_of(signs, desk.fonts)).string();
  const auto plain = [](std::string text) {
    text = without_blanks(std::move(text));
    for (auto at = text.find("\u2010"); at != std::string::npos; at = text.find("\u2010")) text.replace(at, 3, "-");
    return text;
  };
  CHECK(plain(output_of("pdftotext -raw " + pdf + " -")) == all);
  CHECK(plain(output_of("mutool draw -q -F txt " + pdf)) == all);
}
