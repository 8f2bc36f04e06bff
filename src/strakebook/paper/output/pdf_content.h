#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/output/font_subset.h"
#include "strakebook/paper/output/tag_tree.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// The operators that draw a page, and the resources they name: font i is /Fi, the picture at place k of
/// `pictures` /Pk.
struct PageContent {
  std::string operators;
  std::vector<bool> fonts;           ///< by index: used on this page
  std::vector<std::string> pictures; ///< digests
};

/// Draws a sound page, giving codes in `fonts` (one for each font of the document) to what it shows.
/// Positions are written to 0.001 pt, and glyphs stand within a ten-thousandth of the type size of where the
/// page has them, without adding up. Where runs of one piece stand apart, on two lines or with white between, a blank
/// that nobody sees keeps their words apart for who only hears them. Everything that paints is marked content: of the element that its tag
/// names in `tree`, or an artifact.
PageContent draw_page(const page::Page &page, int page_index, std::vector<FontSubset> &fonts, TagTree &tree);

} // namespace strakebook::output
