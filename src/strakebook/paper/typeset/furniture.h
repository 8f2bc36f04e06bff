#pragma once

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/typeset/flow.h"

namespace strakebook::typeset {

/// Draws head and foot of a page and adds their frames; `pages` is the number of pages in all. Words that
/// leave their frame are reported.
void add_furniture(SetPage &set, const content::Furniture &furniture, int pages, const Context &context);

} // namespace strakebook::typeset
