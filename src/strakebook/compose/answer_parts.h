#pragma once

#include "strakebook/compose/voice.h"

/// Parts of page one.
namespace strakebook::compose {

content::Block eyebrow(std::string words); ///< small capitals over a part of page one or of the side column
std::vector<content::Block> worst_remaining(const Scope &scope);
std::vector<content::Block> worst_loss(const Scope &scope); ///< the greatest share lost, with its basis
std::vector<content::Block>
section_and_zones(const Scope &scope); ///< the plate in section, then the lowest steel of each zone
std::vector<content::Block> items(const Scope &scope); ///< recommendations, class A first
content::Block counts(const Scope &scope);             ///< marks planned, read and not read

} // namespace strakebook::compose
