#include "strakebook/paper/typeset/references.h"

#include <utility>

#include "strakebook/paper/typeset/memo.h"
#include "strakebook/paper/typeset/once.h"

namespace strakebook::typeset {
namespace {

constexpr int rounds_most = 5;

void report_unstable(base::Diagnostics &sink) {
  base::Diagnostic d;
  d.code = base::Code::references_unstable;
  d.message = "page references still change the pages after five rounds";
  d.expected = "pages that stay as they are when their own numbers are printed";
  d.write = "a page break before the section that moves";
  sink.add(std::move(d));
}

} // namespace

Places places_of(const std::vector<SetPage> &pages) {
  Places places;
  places.known = true;
  for (std::size_t i = 0; i < pages.size(); ++i)
    for (const auto &item : pages[i].page.items)
      if (std::holds_alternative<page::Anchor>(item.what))
        places.pages.emplace(item.id, static_cast<int>(i + 1));
  return places;
}

Settled settle(const content::Document &document, const style::Style &style, const FontSet &fonts, const Hyphenation &hyphenation,
               const std::vector<ContentsLine> &contents, base::Diagnostics &sink) {
  const Structure structure = structure_of(document);
  Places places;
  Memo memo;
  for (int round = 1;; ++round) {
    base::Diagnostics found;
    memo.begin_round();
    const Context context{style,    fonts, found, places, document.names, document.labels,
                          contents, memo,  1,     {},     "document",     {},
                          &hyphenation, {}, &structure};
    auto pages = flow(document, context);
    auto landed = places_of(pages);
    const bool stable = landed == places;
    if (!stable && round < rounds_most) {
      places = std::move(landed);
      continue;
    }
    add_once_each(found, sink);
    if (!stable)
      report_unstable(sink);
    return {std::move(pages), std::move(landed)};
  }
}

} // namespace strakebook::typeset
