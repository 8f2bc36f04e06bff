#pragma once

#include <string>

#include "strakebook/paper/output/pdf_objects.h"

namespace strakebook::output {

/// The sRGB colour space of IEC 61966-2-1 as an ICC profile, version 2 (ICC.1:2001-04): primaries brought to D50, the
/// transfer curve in 1,024 steps. Same bytes always.
std::string srgb_profile();

/// Says that the colours of the file are sRGB (ISO 19005-1, 6.2.2).
void add_output_intent(PdfFile &file);

} // namespace strakebook::output
