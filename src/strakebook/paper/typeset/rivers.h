#pragma once

#include <cstddef>
#include <vector>

#include "strakebook/paper/typeset/line_break.h"

namespace strakebook::typeset {

/// Where a blank of a line begins and ends, from the left edge of the column.
struct Blank {
  double from = 0, to = 0;
};
using Blanks = std::vector<Blank>;

/// Blanks one under the other through these lines.
struct River {
  std::size_t first = 0, last = 0;
};

/// A river: blanks in at least `least_lines` lines one under the other, of which each shares with the next at
/// least `overlap` of the narrower one. The longest ones only: none is part of another. Our own definition; the
/// trade judges rivers by eye.
std::vector<River> rivers_in(const std::vector<Blanks> &lines, int least_lines, double overlap);

/// The blanks of lines as they are set.
std::vector<Blanks> blanks_of(const std::vector<Piece> &pieces, const std::vector<LineSpan> &lines,
                              const Measure &measure);

} // namespace strakebook::typeset
