#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/paper/media/media.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// What a preview shows of a page: a box of the sheet, and the items that are drawn in it.
struct View {
  std::size_t page = 0; ///< index into Document::pages
  base::Rect box;
  std::size_t first = 0, last = 0; ///< items from `first` up to, not including, `last`
};

/// A whole sheet. Throws std::logic_error for a page that is not sound (sound.h) or not there.
View sheet(const page::Document &document, std::size_t page_index);

/// What the blocks with these ids have on a page, cut to its ink and `margin` more on each side. The items of a block stand
/// together in reading order: all from the first to the last that bears one of the ids are drawn, and nothing else. nullopt:
/// they leave no ink on this page. Throws as sheet() does.
std::optional<View> cut_out(const page::Document &document, std::size_t page_index, const std::vector<std::string> &ids,
                            const media::ImageStore &images, base::Pt margin);

} // namespace strakebook::output
