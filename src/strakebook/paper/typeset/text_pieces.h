#pragma once

#include <memory>
#include <string>
#include <vector>

#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {

struct Division;

/// The smallest part of a line: what line breaking weighs and a line draws.
struct Piece {
  enum class Kind {
    box,    ///< letters that stay together
    glue,   ///< a blank: a line may end here if it is not tied, and it may be stretched
    chance, ///< a line may end here, nothing is drawn
    hyphen, ///< a word may be divided here; what it is in a word that stays whole is drawn: mostly nothing
    sign,   ///< a small drawn sign, with the gap after it
    forced  ///< the line ends here
  } kind = Kind::box;
  std::string text;
  int font = 0;
  base::Pt size;
  page::Colour colour;
  FontSet::Shaped shaped; ///< box, glue, hyphen
  base::Pt width;
  base::Pt hang;           ///< what of its last character stands outside the edge of justified text
  double penalty = 0;      ///< of a line that ends here
  bool tied = false;       ///< a blank at which no line ends
  bool struck = false;     ///< a line goes through it
  std::string target;      ///< of a reference
  std::string meaning;     ///< of a sign
  std::shared_ptr<const Division> division; ///< of a hyphen
  page::TagPath tag;       ///< the element it belongs to
};

/// How the letters at a divided place are drawn: `before` ends the line with a hyphen, `after` begins the next
/// one; where a ligature was parted, they hold its letters.
struct Division {
  Piece before, after;
};

/// Whether a line may end at this piece.
bool may_end(const Piece &piece);

/// Cuts inlines into pieces, shaped in the style. Missing characters are reported.
std::vector<Piece> pieces_of(const content::Inlines &text, const style::TextStyle &style,
                             const TextOptions &options, const Context &context);

} // namespace strakebook::typeset
