#include "strakebook/paper/typeset/typeset.h"

#include <utility>

#include "strakebook/paper/typeset/furniture.h"
#include "strakebook/paper/typeset/memo.h"
#include "strakebook/paper/typeset/once.h"
#include "strakebook/paper/typeset/outline.h"
#include "strakebook/paper/typeset/references.h"

namespace strakebook::typeset {
namespace {

page::Metadata metadata_of(const content::Document &document) {
  return {document.title,    document.author, document.subject,
          document.language, document.date,   document.creator};
}

} // namespace

page::Document typeset(const content::Document &document, const style::Style &style, const FontSet &fonts,
                       const Hyphenation &hyphenation, base::Diagnostics &sink) {
  const auto contents = contents_of(document);
  auto settled = settle(document, style, fonts, hyphenation, contents, sink);
  Memo memo;
  base::Diagnostics found;
  Context context{
      style, fonts,       found, settled.places, document.names, document.labels, contents, memo, 1,
      {},    "furniture", {},    &hyphenation,   page::furniture()};
  page::Document set;
  set.fonts = fonts.fonts();
  set.metadata = metadata_of(document);
  set.outline = outline_of(contents, context);
  const int count = static_cast<int>(settled.pages.size());
  for (auto &page : settled.pages) {
    context.page = static_cast<int>(set.pages.size()) + 1;
    add_furniture(page, document.furniture, count, context);
    set.pages.push_back(std::move(page.page));
  }
  add_once_each(found, sink);
  return set;
}

} // namespace strakebook::typeset
