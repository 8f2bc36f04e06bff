#pragma once

#include "strakebook/compose/voice.h"
#include "strakebook/steel/survey/closing.h"

/// What became of recommendations: of this report's by its addenda, of an earlier report's by this survey.
namespace strakebook::compose {

/// "before refloating, by 30 April 2027".
Inlines deadline_words(const Scope &scope, const survey::Recommendation &item);

std::string closing_word(const Scope &scope, survey::Closing outcome); ///< "partly closed"

/// "closed 4 November 2026, addendum 1"; empty where no addendum speaks of the item.
std::string outcome_words(const Scope &scope, const std::string &recommendation);

/// The table of items that were open when this survey began; no blocks where there were none.
std::vector<content::Block> carried_items(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
