#pragma once

#include <string>

#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/drawing_scale.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// Scales a drawing to `width` (or to its own named scale) and draws it; its items carry `id`. Labels that touch are
/// reported at context.origin.
Fragment draw(const content::Drawing &drawing, base::Pt width, const Context &context, const std::string &id);

/// The same at a scale that is already known (panels of one figure share theirs).
Fragment draw_at(const content::Drawing &drawing, const DrawingScale &scale, const Context &context,
                 const std::string &id);

} // namespace strakebook::typeset
