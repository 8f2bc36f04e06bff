#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook {

/// Adds glyph_missing for every character of the survey's own texts that one of the faces does not have, at the place where it
/// is written; once for each text.
void check_characters(const survey::Survey &survey, const typeset::FontSet &fonts, base::Diagnostics &sink);

} // namespace strakebook
