#pragma once

#include <string>
#include <variant>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/base/source.h"
#include "strakebook/paper/content/document.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// The room a block may use.
struct Region {
  base::Pt width;
  base::Pt height_left;
  base::Pt full_height; ///< height of an empty page; height_left == full_height: this page is empty
  bool empty_page() const { return height_left >= full_height; }
  /// Heights are sums of doubles: a billionth of a point over is not over.
  bool holds(base::Pt height) const { return height.v <= height_left.v + 1e-6; }
};

/// Where a block goes on after a page: a value. {} is its beginning. `index` counts its children (lines,
/// rows, items, blocks) already set; `inner` says where children that were cut go on (one for a sequence, one
/// a cell for columns).
struct Resume {
  std::size_t index = 0;
  std::vector<Resume> inner;
  bool at_start() const { return index == 0 && inner.empty(); }
};

struct Nothing {}; ///< the block prints nothing
struct Whole {
  Fragment fragment;
}; ///< all of it (or all of its rest)
struct Part {
  Fragment fragment;
  Resume rest;
}; ///< something of it; goes on at `rest`
/// Nothing of it fits here. `origin` and `id` name the innermost block that did not fit.
struct NextPage {
  std::string reason;
  base::SourceSpan origin;
  std::string id;
};

using Outcome = std::variant<Nothing, Whole, Part, NextPage>;

/// Whole if the fragment is no higher than the room, else NextPage: for blocks that are never split.
Outcome whole_or_next(Fragment fragment, const Region &region, const std::string &reason);

/// Sets a block from `from`. `context` is that of the block itself (see inside()).
Outcome lay(const content::Block &block, const Resume &from, const Region &region, const Context &context);

/// Sets blocks one under the other with their spaces; a heading stays with what follows it.
Outcome lay_sequence(const std::vector<content::Block> &blocks, const Resume &from, const Region &region,
                     const Context &context);

} // namespace strakebook::typeset
