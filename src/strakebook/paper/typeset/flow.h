#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/typeset/context.h"

namespace strakebook::typeset {

/// A page with its body set, and the master that its head and foot go by.
struct SetPage {
  page::Page page; ///< frames: "body"
  std::string master;
};

/// Sets every section, page after page: the only place that begins a page. A block that does not fit on an
/// empty page is reported at its origin and left out. `context` is that of the document (page and id are set
/// here).
std::vector<SetPage> flow(const content::Document &document, const Context &context);

} // namespace strakebook::typeset
