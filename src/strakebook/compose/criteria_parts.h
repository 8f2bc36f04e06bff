#pragma once

#include "strakebook/compose/voice.h"

/// Parts of the chapter on criteria.
namespace strakebook::compose {

/// What a criterion asks for on this hull, zones with the same answer told together, and where it does not apply and why.
std::string limits_on_hull(const Scope &scope, const policy::Criterion &criterion);
/// To which vessel or plate a criterion is bound; empty where to none.
std::string bound_words(const Scope &scope, const policy::Criterion &criterion);
/// Working of the rule formulas, with what other readings would ask.
content::Block workings_table(const Scope &scope, Numbering &numbering);

/// The firm's ladder as a whole; decisions quote the row that they reached and lead here.
content::Block ladder_table(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
