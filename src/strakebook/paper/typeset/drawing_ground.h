#pragma once

#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/typeset/drawing_shapes.h"

namespace strakebook::typeset {

/// What a label with this ground covers: its letters and, on a ground, the measure "chip-pad" around them; a flag has its
/// point too, half as long as it is high.
base::Rect ground_box(content::Label::Ground ground, const base::Rect &letters, const style::Style &style);

/// Draws the ground of a label, in the meaning "chip", or "flag" for one of the flags.
void draw_ground(content::Label::Ground ground, const base::Rect &letters, const Brush &brush);

} // namespace strakebook::typeset
