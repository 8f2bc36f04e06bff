#pragma once

#include "strakebook/compose/voice.h"

/// Figures that more than one chapter shows, as data.
namespace strakebook::compose {

/// The plate in section at the place with the least remaining: adjacent, depth and remaining dimensioned, the governing
/// limit and the original named; drawn at one scale both ways.
content::Drawing worst_section(const Scope &scope);

/// The frame of strips along the hull, one a side, with nothing on them.
content::Drawing bare_strips(const Scope &scope);
/// Three strips of the hull (port, bottom, starboard) with the extent of every recommendation and its number.
content::Drawing item_strips(const Scope &scope);

/// Where stations are counted from, which way and at which height.
content::Drawing datum_drawing(const Scope &scope);

} // namespace strakebook::compose
