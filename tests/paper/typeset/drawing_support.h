#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/typeset/drawing.h"
#include "support/paper_style.h"

namespace drawing_test {

using namespace strakebook;

/// A drawing of 100 by 50 units at 1 pt a unit with 20 pt around it, so that positions on paper can be read off.
inline content::Drawing board() {
  content::Drawing d;
  d.x1 = 100;
  d.y1 = 50;
  d.x = {content::Scale::Rule::named, "one"};
  d.y = {content::Scale::Rule::as_x, ""};
  d.pad_left = d.pad_right = d.pad_top = d.pad_bottom = "twenty";
  return d;
}

struct Desk : paper_test::Desk {
  Desk() {
    look.measures["one"] = {1};
    look.measures["twenty"] = {20};
    look.measures["label-pad"] = {3};
    look.measures["label-clear"] = {2};
    look.measures["label-shift"] = {10};
    look.measures["tick"] = {4};
    look.measures["axis-number-gap"] = {2};
    look.measures["axis-title-gap"] = {5};
    look.measures["chip-pad"] = {1};
    look.measures["span-tick"] = {6};
    look.measures["arrow-length"] = {5};
    look.meanings["chip"] = {};
    look.meanings["chip"].fill = "white";
    look.meanings["flag"] = look.meanings["chip"];
    look.meanings["flag"].stroke = "ink";
    look.meanings["flag"].stroke_width = {0.5};
  }
  typeset::Fragment draw(const content::Drawing &d) { return typeset::draw(d, {140}, context(), "figure/test"); }
};

/// All items of one kind.
template <class T> std::vector<T> all(const typeset::Fragment &f) {
  std::vector<T> found;
  for (const auto &item : f.items)
    if (const auto *what = std::get_if<T>(&item.what)) found.push_back(*what);
  return found;
}

inline base::Pt width_of(const page::Run &run) {
  base::Pt width;
  for (const auto &glyph : run.glyphs) width += glyph.advance;
  return width;
}

} // namespace drawing_test
