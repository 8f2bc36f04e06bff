#pragma once

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// White above and below a block; of two neighbours the larger counts. At the top of a page there is none.
struct Spacing {
  base::Pt before, after;
  bool keep_with_next = false;
};

Spacing spacing(const content::Block &block, const style::Style &style);

/// The text style of a heading: its own, or "heading-<level>".
const style::TextStyle &heading_style(const content::Heading &heading, const style::Style &style);

} // namespace strakebook::typeset
