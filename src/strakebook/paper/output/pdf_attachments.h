#pragma once

#include <vector>

#include "strakebook/paper/output/pdf_objects.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// Files that go with the document (ISO 32000-1, 7.11.4), each as a source of what the pages say (ISO 32000-2, 14.13). None has a date.
/// Throws std::logic_error for a name that comes twice or is empty, and for any file of an archival PDF, which carries none.
void add_attachments(PdfFile &file, const std::vector<page::Attachment> &attachments);

} // namespace strakebook::output
