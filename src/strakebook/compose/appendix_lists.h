#pragma once

#include "strakebook/compose/keys.h"

/// Lists of the appendices: under a head of their own, or in one sentence where there is nothing to list.
namespace strakebook::compose {

/// Every mark left out of the figures, with its reason; figures themselves stand in the results tables alone.
std::vector<content::Block> exclusions(const Scope &scope, Numbering &numbering);
/// Warnings of this run, each with the reason by which the surveyor answers for it.
std::vector<content::Block> acknowledged(const Scope &scope, Numbering &numbering);
/// Every quantity of the outlook, with its formula and what went in; empty where there is none.
std::vector<content::Block> quantities(const Scope &scope, Numbering &numbering);
/// Rules and values of the house that this report rests on.
content::Block rules_used(const Scope &scope);
/// What the survey leaves open, and what was taken: an entry for each kind.
void add_defaults(const Scope &scope, Entries &entries);
/// Usual figures of plate work, where there is a schedule of steelwork.
void add_works_rule(const Scope &scope, Entries &entries);

} // namespace strakebook::compose
