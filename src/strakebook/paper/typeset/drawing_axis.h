#pragma once

#include <vector>

#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/drawing_shapes.h"
#include "strakebook/paper/typeset/drawing_text.h"

namespace strakebook::typeset {

/// Draws the line and ticks of an axis (meaning "axis", length "tick", outwards).
void draw_axis(const content::Axis &axis, const Brush &brush);

/// Its numbers and title. A number stands centred under or over its tick, or with its capitals centred beside it, an
/// "axis-number-gap" from the tick's end, whether a tick is drawn there or not. The title ends an "axis-title-gap"
/// before the first number on the same baseline; at the left it stands that far above the highest one.
std::vector<PlacedText> placed_axis(const content::Axis &axis, const DrawingScale &scale, const Context &context);

} // namespace strakebook::typeset
