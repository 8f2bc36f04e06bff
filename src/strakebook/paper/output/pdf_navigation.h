#pragma once

#include <map>
#include <string>
#include <vector>

#include "strakebook/paper/output/pdf_objects.h"
#include "strakebook/paper/output/tag_tree.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Where an anchor is.
struct Place {
  std::size_t page = 0; ///< index
  base::Point at;
};
using Places = std::map<std::string, Place>;

/// Every anchor by its id. Where an id comes twice (a block that goes on over a page), the first in reading
/// order counts.
Places places_of(const page::Document &document);

/// Links, bookmarks, page labels and named destinations of a document whose pages are all in the file. Returns the
/// annotations of the links, each of which is a kid of its element in `tree`. A link or bookmark to an anchor that does not exist, or an outline that skips a level, throws std::logic_error.
std::vector<PdfDict> add_navigation(PdfFile &file, std::vector<PdfDict> &pages, const page::Document &document,
                                    TagTree &tree);

} // namespace strakebook::output
