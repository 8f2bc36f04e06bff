#include <catch2/catch.hpp>

#include <cmath>
#include <map>
#include <set>

#include "report/examples_support.h"
#include "strakebook/paper/typeset/rivers.h"

using namespace strakebook;

// Finished pages of the examples, measured from where their glyphs stand: the breaker is not asked.

namespace {

bool in_contents(page::TagPath tag) {
  for (; tag; tag = tag->parent)
    if (tag->role == page::Role::contents)
      return true;
  return false;
}

/// One line of a text in a style: its runs, from left to right.
struct SetLine {
  std::vector<const page::Run *> runs;
  double from = 0, to = 0;
};

double end_of(const page::Run &run) {
  double x = run.origin.x.v;
  for (const auto &glyph : run.glyphs)
    x += glyph.advance.v;
  return x;
}

std::string text_of(const SetLine &line) {
  std::string text;
  for (const auto *run : line.runs)
    text += run->text;
  return text;
}

/// Lines of text, paragraph by paragraph: what stands in the reading face and size and belongs to one block.
std::vector<std::vector<SetLine>> paragraphs_of(const page::Page &page, const examples::TextLook &look) {
  std::map<std::pair<std::string, long>, std::map<double, SetLine>> found; // by id and left edge, by baseline
  for (const auto &item : page.items) {
    const auto *run = std::get_if<page::Run>(&item.what);
    if (!run || in_contents(item.tag) || !look.has(*run))
      continue;
    auto &lines = found[{item.id, 0}];
    auto &line = lines[std::round(run->origin.y.v * 1000) / 1000];
    if (line.runs.empty())
      line.from = run->origin.x.v;
    line.to = end_of(*run);
    line.runs.push_back(run);
  }
  std::vector<std::vector<SetLine>> paragraphs;
  for (auto &[key, lines] : found) {
    auto &paragraph = paragraphs.emplace_back();
    for (auto &[y, line] : lines)
      paragraph.push_back(line);
  }
  return paragraphs;
}

/// What the blanks of a line are of their own width.
double blanks_of(const SetLine &line, const examples::TextLook &look) {
  double wide = 0, own = 0;
  for (const auto *run : line.runs)
    for (const auto &glyph : run->glyphs)
      if (run->text[glyph.cluster] == ' ') {
        wide += glyph.advance.v;
        own += look.blank(*run);
      }
  return own > 0 ? wide / own : 1;
}

typeset::Blanks places_of_blanks(const SetLine &line) {
  typeset::Blanks blanks;
  for (const auto *run : line.runs) {
    double x = run->origin.x.v;
    for (const auto &glyph : run->glyphs) {
      if (run->text[glyph.cluster] == ' ')
        blanks.push_back({x, x + glyph.advance.v});
      x += glyph.advance.v;
    }
  }
  return blanks;
}

bool divided(const SetLine &line) { return text_of(line).ends_with("\u00AD"); }

struct Found {
  int lines = 0, divided = 0, rivers = 0, beyond = 0, longest_row = 0;
  double worst = 1;
  std::string pulled; ///< the lines beyond the setting
};

void measure(const std::vector<SetLine> &paragraph, const examples::TextLook &look, const style::Setting &setting, Found &found) {
  int row = 0;
  std::vector<typeset::Blanks> blanks;
  for (std::size_t i = 0; i < paragraph.size(); ++i) {
    const auto &line = paragraph[i];
    ++found.lines;
    row = divided(line) ? row + 1 : 0;
    found.divided += divided(line) ? 1 : 0;
    found.longest_row = std::max(found.longest_row, row);
    blanks.push_back(places_of_blanks(line));
    const double stretched = blanks_of(line, look);
    found.worst = std::max(found.worst, stretched);
    if (stretched > 1 + setting.blanks_grow + 1e-6 || stretched < 1 - setting.blanks_shrink - 1e-6) {
      ++found.beyond;
      found.pulled += std::to_string(stretched) + " " + text_of(line) + "\n";
    }
  }
  found.rivers += static_cast<int>(typeset::rivers_in(blanks, setting.river_lines, setting.river_overlap).size());
}

} // namespace

TEST_CASE("every line of text stands on the half grid, in every column") {
  for (const auto &name : examples::names()) {
    const examples::Example example(name);
    const auto look = example.text_look();
    int lines = 0, off = 0;
    for (const auto &page : example.pages.pages)
      for (const auto &paragraph : paragraphs_of(page, look))
        for (const auto &line : paragraph) {
          const double steps = (line.runs.front()->origin.y - page.frames.front().box.at.y - look.first_baseline).v / look.half_step.v;
          ++lines;
          off += std::abs(steps - std::round(steps)) * look.half_step.v > 0.01 ? 1 : 0;
        }
    INFO(name << ": " << off << " of " << lines << " lines");
    CHECK(lines > 40);
    CHECK(off == 0);
  }
}

TEST_CASE("paragraphs of the examples: blanks, hyphens and rivers") {
  Found all;
  for (const auto &name : examples::names()) {
    const examples::Example example(name);
    const auto look = example.text_look();
    for (const auto &page : example.pages.pages)
      for (const auto &paragraph : paragraphs_of(page, look))
        measure(paragraph, look, example.the_case.house.style.setting, all);
  }
  INFO(all.lines << " lines, " << all.divided << " divided, " << all.rivers << " rivers, " << all.beyond
                 << " beyond, worst " << all.worst << "\n" << all.pulled);
  CHECK(all.longest_row <= 2);
  CHECK(all.divided * 10 <= all.lines);    // one line in ten at the most ends inside a word
  CHECK(all.rivers * 100 <= all.lines);    // by the definition of a river in the typesetter
  CHECK(all.beyond * 15 <= all.lines); // figures held together leave no other way
  CHECK(all.divided > 0);
}

TEST_CASE("page one of each example is one page") {
  for (const auto &name : examples::names()) {
    const examples::Example example(name);
    std::vector<std::set<std::string>> sections;
    for (const auto &page : example.pages.pages) {
      auto &on_page = sections.emplace_back();
      for (const auto &item : page.items)
        if (std::holds_alternative<page::Anchor>(item.what) && item.id.rfind("section/", 0) == 0 &&
            item.id.find('/', 8) == std::string::npos)
          on_page.insert(item.id);
    }
    INFO(name);
    CHECK(sections.at(0) == std::set<std::string>{"section/answer"});
    CHECK_FALSE(sections.at(1).empty());
  }
}
