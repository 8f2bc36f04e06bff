#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "strakebook/paper/typeset/typeset.h"
#include "support/paper_style.h"

/// Blocks by hand and page items read back, for the tests of pagination.
namespace paper_test {

namespace content = strakebook::content;
namespace page = strakebook::page;
using strakebook::base::Code;

inline content::Block block(decltype(content::Block::what) what, std::string id = {}) {
  content::Block b;
  b.id = std::move(id);
  b.what = std::move(what);
  return b;
}

inline content::Block paragraph(const std::string &text, const std::string &style = "ragged",
                                std::string id = {}) {
  return block(content::Paragraph{content::plain(text), style, {}}, std::move(id));
}

/// A block of `lines` lines of 12 pt that is set as one: an opaque block.
inline content::Block opaque(int lines, std::string id = {}) {
  content::Together group;
  content::Inlines text;
  for (int i = 0; i < lines; ++i) {
    if (i > 0)
      text.push_back(content::LineBreak{});
    text.push_back(content::Text{"solid"});
  }
  group.blocks.push_back(block(content::Paragraph{text, "ragged", {}}));
  return block(std::move(group), std::move(id));
}

inline content::Block heading(int level, const std::string &number, const std::string &text, std::string id) {
  return block(content::Heading{level, number, content::plain(text), true, {}}, std::move(id));
}

inline content::Document document(std::vector<content::Block> blocks) {
  content::Document d;
  d.labels = Desk().labels;
  d.furniture.head_left = content::plain("Test boat");
  d.furniture.foot_right = "page {page} of {pages}";
  content::Section section;
  section.id = "section/one";
  section.blocks = std::move(blocks);
  d.sections.push_back(std::move(section));
  return d;
}

inline page::Document set(const content::Document &d, Desk &desk) {
  return strakebook::typeset::typeset(d, desk.look, desk.fonts, desk.hyphenation, desk.sink);
}

/// Lines of text by baseline, top to bottom, each as (y, text); runs of one line are joined with "|".
inline std::vector<std::pair<double, std::string>> lines_of(const page::Page &p, const std::string &frame) {
  std::map<double, std::string> lines;
  for (const auto &f : p.frames)
    if (f.name == frame)
      for (const auto &item : p.items)
        if (const auto *run = std::get_if<page::Run>(&item.what))
          if (run->origin.y > f.box.at.y && run->origin.y < f.box.bottom()) {
            auto &line = lines[run->origin.y.v];
            line += (line.empty() ? "" : "|") + run->text;
          }
  return {lines.begin(), lines.end()};
}

inline std::string text_of(const page::Page &p, const std::string &frame = "body") {
  std::string text;
  for (const auto &[y, line] : lines_of(p, frame))
    text += line + "\n";
  return text;
}

inline const page::Item *anchor_of(const page::Page &p, const std::string &id) {
  for (const auto &item : p.items)
    if (item.id == id && std::holds_alternative<page::Anchor>(item.what))
      return &item;
  return nullptr;
}

inline double y_of_anchor(const page::Page &p, const std::string &id) {
  const auto *item = anchor_of(p, id);
  return item ? std::get<page::Anchor>(item->what).at.y.v : -1;
}

inline int count_code(const Desk &desk, Code code) {
  int n = 0;
  for (const auto &d : desk.sink.all())
    n += d.code == code ? 1 : 0;
  return n;
}

} // namespace paper_test
