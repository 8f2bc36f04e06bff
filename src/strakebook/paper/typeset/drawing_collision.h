#pragma once

#include <span>
#include <vector>

#include "strakebook/base/geometry.h"

namespace strakebook::typeset {

/// Two boxes that lie over one another; `by` is the shorter side of what they share.
struct Overlap {
  std::size_t first = 0, second = 0; ///< positions in the list, first < second
  base::Pt by;
};

/// Whether two boxes overlap by more than `allowed`. Empty boxes never do.
bool touch(const base::Rect &a, const base::Rect &b, base::Pt allowed);

/// Every pair of boxes that overlap by more than `allowed`, in the order of the list. Empty boxes never do.
std::vector<Overlap> overlaps(std::span<const base::Rect> boxes, base::Pt allowed);

/// Positions of the boxes that reach out of `area` by more than `allowed`. Empty boxes never do.
std::vector<std::size_t> outside(std::span<const base::Rect> boxes, const base::Rect &area, base::Pt allowed);

} // namespace strakebook::typeset
