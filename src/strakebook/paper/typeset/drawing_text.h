#pragma once

#include <span>
#include <string>
#include <vector>

#include "strakebook/base/geometry.h"
#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/drawing_scale.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// Text of a drawing in its place.
struct PlacedText {
  std::vector<page::Item> items;
  base::Rect box; ///< from the top of the capitals to the baseline, or to the descenders where there are any
};

/// Where text stands, as in content::Label.
struct TextPlace {
  base::Point at;
  content::Anchor anchor = content::Anchor::centre;
  content::Level level = content::Level::baseline;
  bool upwards = false;
};

/// Sets text at a place, a line for every LineBreak, digits of one width. Anchor: its left end, middle or right end
/// stands at `at`. Level: baseline, the first baseline is at `at`; above, the last baseline is a "label-pad" over it;
/// below, the capitals begin a "label-pad" under it; middle, the capitals are centred on it, and text anchored left or
/// right keeps a "label-pad" from it. Upwards: all of this turned a quarter to the left about `at`.
/// Empty text gives no items and an empty box.
PlacedText placed_text(const content::Inlines &text, const std::string &text_style, const TextPlace &place,
                       const Context &context);

/// The labels of a drawing in their order, those of one lane (same height, same level, not upwards) pushed apart where
/// they would touch: see pushed_apart, with the measures "label-clear" and "label-shift".
std::vector<PlacedText> placed_labels(const content::Drawing &drawing, const DrawingScale &scale,
                                      const Context &context);

/// The context of a label: one that leads somewhere is an element of its own inside the figure of `context`. `index`
/// counts the labels of its drawing.
Context label_context(const content::Label &label, std::size_t index, const Context &context);

/// Height of the capitals of a text style.
base::Pt cap_height(const style::TextStyle &style, const FontSet &fonts);

/// The words of placed text, for messages.
std::string words_of(const PlacedText &text);

void translate(PlacedText &text, base::Point by);

} // namespace strakebook::typeset
