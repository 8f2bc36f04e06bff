#pragma once

#include "strakebook/compose/thickness.h"

/// The small plate section in a table row: inside face at the left, what remains filled in the tone of its band, what is gone
/// blank within the dashed original, the limit as a tick, a pit as a notch.
namespace strakebook::compose {

struct PlateGlyph {
  Length original;
  Length remaining;               ///< of the plate, or beside the pit
  std::optional<Length> under_pit;
  std::optional<Length> limit;
  std::string ramp;               ///< meaning of the band
  Length widest;                  ///< the thickest plate of the table: one datum and one scale for all rows
};

content::Drawing plate_glyph(const PlateGlyph &plate);
/// A plate as two issues have it, one under the other at one scale, each with its name at the right.
struct NamedPlate {
  PlateGlyph plate;
  std::string name;
};
content::Drawing plate_pair(const NamedPlate &before, const NamedPlate &now);
content::Drawing unread_glyph(Length original, Length widest);
/// A doubler: the inner plate not proven, the outer one to scale beside it and never joined.
content::Drawing doubler_glyph(Length original, Length outer, Length widest);

/// The width that a table's glyphs share.
Length widest_plate(const Scope &scope);

} // namespace strakebook::compose
