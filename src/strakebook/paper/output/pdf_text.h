#pragma once

#include <string>

#include "strakebook/paper/output/font_subset.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Appends the operators that show the glyphs of a run from the text matrix on, with font and size already
/// set. Whatever the page's advances say beyond a glyph's own width (kerning, tracking, justification)
/// becomes an adjustment. Where several glyphs stand for one text, it is given as ActualText.
void append_glyphs(std::string &to, const page::Run &run, FontSubset &font);

} // namespace strakebook::output
