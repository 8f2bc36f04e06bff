#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "strakebook/paper/typeset/text_pieces.h"

namespace strakebook::typeset {

/// A place at which a line may end, with nothing drawn.
Piece line_end(Piece::Kind kind, double penalty);

/// A word of one box, cut at byte offsets of its text where it may be divided. What is drawn of the whole word
/// is as it was, glyph by glyph. `shape` fills in a box whose text is given, in the look of the word.
std::vector<Piece> divided(const Piece &word, const std::vector<std::size_t> &breaks,
                           const std::function<void(Piece &)> &shape);

/// Makes chances to break inside whatever is wider than `width` between two places where a line may end, at its
/// tied blanks or, where there are none, between any two characters, so that every part fits.
void split_wide(std::vector<Piece> &pieces, base::Pt width);

} // namespace strakebook::typeset
