#pragma once

#include <span>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::typeset {

/// A straight stroke on paper.
struct HatchLine {
  base::Point from, to;
};

/// The lines of a hatch inside a closed polygon, clipped exactly (even-odd), so that no backend needs a clip path.
/// `pitch` is measured across the lines. Diagonal lines rise to the right at 45 degrees; cross adds those that fall.
/// The lattice of lines hangs on the origin, not on the polygon: neighbours share one hatch. Hatch::none gives none.
/// Precondition: pitch over 0 unless Hatch::none; fewer than three points give no lines.
std::vector<HatchLine> hatch_lines(std::span<const base::Point> polygon, style::Hatch hatch, base::Pt pitch);

} // namespace strakebook::typeset
