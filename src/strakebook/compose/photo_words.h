#pragma once

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// Why a photograph has no picture: not taken or withheld, with the surveyor's reason; no file given; or a file that is not
/// in the survey's folder.
Inlines missing_words(const Scope &scope, const survey::Photo &photo);

/// Digests are read aloud and compared by eye: groups of four.
std::string in_fours(std::string_view digest);

} // namespace strakebook::compose
