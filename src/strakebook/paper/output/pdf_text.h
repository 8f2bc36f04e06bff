#pragma once

#include <string>
#include <string_view>

#include "strakebook/paper/output/font_subset.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Appends the operators that show the glyphs of a run from the text matrix on, with font and size already
/// set. Whatever the page's advances say beyond a glyph's own width (kerning, tracking, justification)
/// becomes an adjustment. Where several glyphs stand for one text, it is given as ActualText.
void append_glyphs(std::string &to, const page::Run &run, FontSubset &font);

/// Appends a blank at the end of what was shown last, in the font that is set; nothing if the face has none.
void append_blank(std::string &to, FontSubset &font);

/// Whether words need a blank between them when `after` does not follow `before` without a gap: neither brings one, and the
/// line does not end at a hyphen or a dash inside a word.
bool needs_blank(std::string_view before, std::string_view after);

} // namespace strakebook::output
