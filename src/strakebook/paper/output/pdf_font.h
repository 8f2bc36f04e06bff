#pragma once

#include "strakebook/paper/output/font_subset.h"
#include "strakebook/paper/output/pdf_objects.h"

namespace strakebook::output {

/// Fills `font` with the Type0 font of a finished subset: the glyphs in use as embedded TrueType, their
/// widths, and the text that each code stands for (ISO 32000-1, 9.7).
void write_font(PdfFile &file, PdfDict font, const FontSubset &subset);

} // namespace strakebook::output
