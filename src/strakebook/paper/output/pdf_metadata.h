#pragma once

#include "strakebook/paper/output/pdf_objects.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Title, author and the like as the information dictionary and, equal to it, as an XMP packet; language; the
/// title shown in the window. The only date is the report's own. Throws std::logic_error for a date that is
/// not one or control characters.
void add_metadata(PdfFile &file, const page::Metadata &metadata);

} // namespace strakebook::output
