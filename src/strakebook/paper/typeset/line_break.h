#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "strakebook/paper/style/setting.h"
#include "strakebook/paper/typeset/text_pieces.h"

namespace strakebook::typeset {

/// The pieces of one line, blanks at its ends left out.
struct LineSpan {
  std::size_t begin = 0, end = 0;
  std::optional<std::size_t> head, tail; ///< places where words are divided, that begin and end the line
  base::Pt natural;  ///< width before stretching, without what hangs over the edge
  bool last = false; ///< of the paragraph, or before a meant line end: not justified
};

struct Measure {
  base::Pt width;
  base::Pt first_indent;
  bool justified = false;
  const style::Setting &setting;
};

/// Total fit (Knuth and Plass, Breaking Paragraphs into Lines, 1981): of all ways to break the paragraph, the one
/// with the least demerits. In justified text
/// - blanks stay within the stretch and shrink of the setting, and are pulled further only where no way of
///   breaking keeps to it;
/// - no more lines in a row end in a hyphen than the setting has, unless nothing else can be set at all;
/// - a tight line does not stand beside a loose one, nor a divided word above a last line, where it can be helped;
/// - of ways that keep to all this, one without a river is taken if one is found near the best.
/// Ragged text is weighed by what lines leave empty. Precondition: split_wide has run.
std::vector<LineSpan> break_lines(const std::vector<Piece> &pieces, const Measure &measure);

/// How many times their own width the blanks of a line are; `room` is what the line may fill.
double glue_factor(const std::vector<Piece> &pieces, const LineSpan &line, base::Pt room);

} // namespace strakebook::typeset
