#pragma once

#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Looks at every number of a page before any of it is drawn. Throws std::logic_error, naming page and item,
/// for: a number that is not finite; a place, the start or the end of a run, or a corner of a box that is not
/// on the sheet; a font that the document does not have; glyphs that do not stand for the whole text of their
/// run in order; a path that does not begin with a move; a colour part outside 0 to 1. Such a page is a
/// mistake of the program and must not be printed.
void require_sound(const page::Document &document, std::size_t page_index);

} // namespace strakebook::output
