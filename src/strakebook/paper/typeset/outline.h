#pragma once

#include <vector>

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/typeset/context.h"

namespace strakebook::typeset {

/// The id of a section: its own, or one made from its position.
std::string section_id(const content::Section &section, std::size_t index);

/// All headings that go into the contents and all tables and figures with a label, in order, also those inside columns and
/// groups.
std::vector<ContentsLine> contents_of(const content::Document &document);

/// What a table or figure is called in a list: its caption up to the first stop.
std::string caption_title(const ContentsLine &line, const Context &context);

/// Bookmarks from headings of level 1 and 2 and, under them, tables and figures; no level is skipped.
std::vector<page::OutlineEntry> outline_of(const std::vector<ContentsLine> &contents, const Context &context);

} // namespace strakebook::typeset
