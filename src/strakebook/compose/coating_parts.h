#pragma once

#include <span>

#include "strakebook/compose/voice.h"

/// Parts of the chapter on coating and anodes.
namespace strakebook::compose {

content::Block schemes_table(const Scope &scope, Numbering &numbering);
content::Block plan_table(const Scope &scope, Numbering &numbering);
/// What follows from metals and water, wear and width; nothing where nothing does.
std::vector<content::Block> protection_sentences(const Scope &scope);

/// "area, dry film and loss".
std::string lack_words(const Scope &scope, std::span<const protection::Lack> lacking);

/// A number or length as it was written, or a dash.
content::Cell given_cell(const Scope &scope, const std::optional<base::Decimal> &value);
content::Cell given_cell(const Scope &scope, const std::optional<base::Measured> &value);
/// A figure worked out, with so many decimals, or a dash.
content::Cell reckoned_cell(const Scope &scope, const std::optional<double> &value, int places);

} // namespace strakebook::compose
