#pragma once

#include <span>
#include <vector>

#include "strakebook/base/geometry.h"

namespace strakebook::typeset {

/// A label in a lane: where its left edge wants to stand, and its width.
struct LaneLabel {
  base::Pt left, width;
};

/// What a lane allows.
struct Lane {
  base::Pt from, to; ///< its ends; labels stay inside if they can
  base::Pt clear;    ///< least white between two neighbours
  base::Pt most;     ///< the furthest that a label may be moved
};

/// Left edges, in the order given, with neighbours at least `clear` apart: the sum of squared moves is the least
/// possible (isotonic regression by pooling). Labels keep the order of their middles. A label is never moved further
/// than `most`, so labels may still touch afterwards: the caller looks. Labels that do not touch are not moved.
std::vector<base::Pt> pushed_apart(std::span<const LaneLabel> labels, const Lane &lane);

} // namespace strakebook::typeset
