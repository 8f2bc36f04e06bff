#pragma once

#include <vector>

#include "strakebook/paper/content/document.h"
#include "strakebook/paper/typeset/flow.h"

namespace strakebook::typeset {

/// A document whose page references say where their targets stand.
struct Settled {
  std::vector<SetPage> pages;
  Places places;
};

/// Where the anchors of the pages stand; of two with one id the first counts.
Places places_of(const std::vector<SetPage> &pages);

/// Sets the document again and again until page numbers no longer change (normally two rounds, at most five;
/// then references_unstable is reported). Only what the last round reports goes to `sink`, each thing once.
Settled settle(const content::Document &document, const style::Style &style, const FontSet &fonts,
               const Hyphenation &hyphenation, const std::vector<ContentsLine> &contents, base::Diagnostics &sink);

} // namespace strakebook::typeset
