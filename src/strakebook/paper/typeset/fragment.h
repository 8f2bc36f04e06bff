#pragma once

#include <string>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// Something that has been set but has no page yet: items placed relative to its own top left corner (0,0), y
/// down.
struct Fragment {
  base::Size size;
  std::vector<page::Item> items; ///< in reading order
  base::Pt first_baseline;       ///< from the top, when it begins with a line of text; else 0
  bool divided = false;          ///< a line that ends inside a word, with a hyphen
};

/// Moves an item, with everything in it.
void translate(page::Item &item, base::Point by);

/// Moves the items of `part` by `at` and appends them to `out`.
void append(std::vector<page::Item> &out, Fragment part, base::Point at);

/// Sets `below` under `above` with a gap between; the width grows if needed, the first baseline stays that of
/// `above` (or becomes that of `below` if `above` is still without height).
void stack(Fragment &above, Fragment below, base::Pt gap);

page::Colour colour(const style::Tone &tone);

/// A filled rectangle without outline.
page::Item filled_box(const base::Rect &box, page::Colour fill);

/// A straight horizontal rule; y is its middle.
page::Item rule(base::Pt x0, base::Pt x1, base::Pt y, base::Pt width, page::Colour colour,
                const std::vector<base::Pt> &dash = {});

/// Nothing to see: it keeps the place of an element that is left empty.
page::Item presence(const page::TagPath &tag, const std::string &id);

/// A named place for links and the outline.
page::Item anchor(const std::string &id, base::Point at);

} // namespace strakebook::typeset
