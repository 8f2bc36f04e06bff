#pragma once

#include "pages_support.h"
#include "strakebook/paper/typeset/line.h"

/// Lines of a paragraph read back.
namespace paper_test {

inline std::string text_of_line(const strakebook::typeset::Fragment &line) {
  std::string text;
  for (const auto &item : line.items)
    if (const auto *run = std::get_if<page::Run>(&item.what))
      text += run->text;
  return text;
}

inline double right_end(const strakebook::typeset::Fragment &line) {
  double x = 0;
  for (const auto &item : line.items)
    if (const auto *run = std::get_if<page::Run>(&item.what)) {
      x = run->origin.x.v;
      for (const auto &glyph : run->glyphs)
        x += glyph.advance.v;
    }
  return x;
}

} // namespace paper_test
