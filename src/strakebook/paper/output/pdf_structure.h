#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/output/pdf_objects.h"
#include "strakebook/paper/output/tag_tree.h"

namespace strakebook::output {

/// The standard structure type of an element (ISO 32000-1, 14.8.4): "H2".
std::string structure_type(const page::Tag &tag);

/// Writes the structure tree and the way back from marked content and links to it (ISO 32000-1, 14.7), once all pages and
/// their `links` (in the order of tree.links()) are in the file. An element with more kids than a reader's arrays hold is
/// written as several of its kind, one after the other.
void add_structure(PdfFile &file, std::vector<PdfDict> &pages, const std::vector<PdfDict> &links, const TagTree &tree);

/// The number under which a link's annotation finds its element.
int structure_number(std::size_t pages, int link);

} // namespace strakebook::output
