#pragma once

#include <filesystem>

#include "strakebook/base/diagnostic.h"
#include "strakebook/paper/content/document.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/paper/typeset/hyphenation.h"

namespace strakebook::typeset {

/// Sets the whole document: pure, same values in, same pages out. What cannot be set (a character no face has, a block
/// larger than an empty page, references that do not settle in five rounds, labels that touch) is added to `sink` at the
/// block's origin; then the returned pages are not to be written.
page::Document typeset(const content::Document &document, const style::Style &style, const FontSet &fonts,
                       const Hyphenation &hyphenation, base::Diagnostics &sink);

} // namespace strakebook::typeset
