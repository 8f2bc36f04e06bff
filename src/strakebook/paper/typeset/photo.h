#pragma once

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/typeset/layout.h"

namespace strakebook::typeset {

/// A photograph or its placeholder frame, with number, caption and strip; never split.
Outcome lay_photo(const content::Photo &photo, const Region &region, const Context &context);

} // namespace strakebook::typeset
