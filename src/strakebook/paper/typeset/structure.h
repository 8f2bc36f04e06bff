#pragma once

#include <unordered_map>

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/page/tag.h"

namespace strakebook::typeset {

/// The element of every block of a document, by the block's address (the document does not move while it is set).
using Structure = std::unordered_map<const content::Block *, page::TagPath>;

/// Sections, and inside them a section for every heading with what follows it, however deep the heading stands in columns
/// or in groups. The level of a heading is the count of sections around it, so that none is skipped whatever the looks are;
/// the heading that opens a section of the document is of level 1. A column is an element of its own, so that it is read to
/// its end before the next one. Figures, photographs and tables are groups: their caption and notes stand in them beside
/// what they speak of.
Structure structure_of(const content::Document &document);

} // namespace strakebook::typeset
