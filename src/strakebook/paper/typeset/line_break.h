#pragma once

#include <cstddef>
#include <vector>

#include "strakebook/paper/typeset/text_pieces.h"

namespace strakebook::typeset {

/// The pieces of one line, blanks at its ends left out.
struct LineSpan {
  std::size_t begin = 0, end = 0;
  base::Pt natural;  ///< width before stretching
  bool last = false; ///< of the paragraph, or before a meant line end: not justified
};

struct Measure {
  base::Pt width;
  base::Pt first_indent;
  bool justified = false;
};

/// How far the blanks of a line of the whole paragraph are pulled is what is weighed (total fit: the breaks
/// with the least sum of squared badness; ragged text is weighed by what lines leave empty). Precondition:
/// split_wide has run.
std::vector<LineSpan> break_lines(const std::vector<Piece> &pieces, const Measure &measure);

/// Blanks may grow by half and shrink by a quarter of their width.
inline constexpr double glue_stretch = 0.5, glue_shrink = 0.25;

} // namespace strakebook::typeset
