#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {

/// The smallest part of a line: what line breaking weighs and a line draws.
struct Piece {
  enum class Kind {
    box,    ///< letters that stay together
    glue,   ///< a blank: a line may end here, and it may be stretched
    chance, ///< a line may end here, nothing is drawn
    sign,   ///< a small drawn sign, with the gap after it
    forced  ///< the line ends here
  } kind = Kind::box;
  std::string text;
  int font = 0;
  base::Pt size;
  page::Colour colour;
  FontSet::Shaped shaped; ///< box and glue
  base::Pt width;
  double penalty = 0;  ///< of a line that ends here
  std::string target;  ///< of a reference
  std::string meaning; ///< of a sign
};

/// Cuts inlines into pieces, shaped in the style. Missing characters are reported.
std::vector<Piece> pieces_of(const content::Inlines &text, const style::TextStyle &style,
                             const TextOptions &options, const Context &context);

/// Makes chances to break inside whatever is wider than `width` between two chances, so that every part fits.
void split_wide(std::vector<Piece> &pieces, base::Pt width);

} // namespace strakebook::typeset
