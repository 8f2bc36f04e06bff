#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/geometry.h"
#include "strakebook/paper/content/document.h"
#include "strakebook/paper/page/tag.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/paper/typeset/hyphenation.h"
#include "strakebook/paper/typeset/structure.h"

namespace strakebook::typeset {

/// Where every id landed in the previous round; empty in the first.
struct Places {
  std::map<std::string, int, std::less<>> pages; ///< id -> page number from 1
  bool known = false; ///< false in the first round: page numbers are guesses of two digits
  bool operator==(const Places &) const = default;
};

/// One line of the table of contents or of the lists of tables and figures, gathered before setting begins.
struct ContentsLine {
  content::Contents::Of kind = content::Contents::Of::headings;
  int level = 1; ///< of a table or figure: one under the heading before it
  std::string number;    ///< of a table or figure: its label
  content::Inlines text; ///< of a table or figure: its caption
  std::string target;    ///< id of the block
};

/// What is measured once in a round and used again on the next page (column widths of a table).
struct Memo;

/// Everything a block needs to be set, beside itself and its room. Cheap to copy; `inside` makes the one for
/// a child.
struct Context {
  const style::Style &style;
  const FontSet &fonts;
  base::Diagnostics &sink;
  const Places &places;
  const std::map<std::string, std::string> &names; ///< id -> what a label reference prints
  const content::Labels &labels;
  const std::vector<ContentsLine> &contents;
  Memo &memo;
  int page = 1;            ///< number of the page being set, from 1
  base::Pt indent;         ///< from the body's left edge to the left edge of the region being set
  std::string id;          ///< of the block being set; never empty: the ids of its items
  base::SourceSpan origin; ///< of the block being set: where its diagnostics point to
  const Hyphenation *hyphenation = nullptr; ///< null: words stay whole
  page::TagPath tag = {};  ///< the element that what is being set belongs to
  const Structure *structure = nullptr; ///< the elements of the document's blocks
};

/// A made id for the part of `parent` at a position: "section/results/3".
std::string child_id(const std::string &parent, std::size_t index);

/// The id of a block: its own, or one made from its parent's and its position.
std::string id_of(const content::Block &block, const std::string &parent, std::size_t index);

/// The context for a block inside the one being set.
Context inside(const Context &parent, const content::Block &block, std::size_t index);

/// The same context, moved to the right by `by`.
Context moved(const Context &context, base::Pt by);

/// The same context, for an element inside the one being set.
Context tagged(const Context &context, page::Tag tag);

/// The same context, for what stands again on a later page: it belongs to no element and leads nowhere.
Context repeated(const Context &context);

/// Adds an error at the origin of the block being set.
void report(const Context &context, base::Code code, std::string message, std::string expected = {},
            std::string write = {});

} // namespace strakebook::typeset
