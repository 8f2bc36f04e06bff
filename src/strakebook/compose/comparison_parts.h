#pragma once

#include "strakebook/compose/tables.h"

/// The parts of the chapter that compares surveys of different years.
namespace strakebook::compose {

/// Each earlier survey: its day, its gauge, how its datum lies in this one, how many of its places were found again.
content::Block earlier_surveys_table(const Scope &scope, Numbering &numbering);
/// What was not found again, here and there; nothing where all was.
std::vector<content::Block> not_found_again(const Scope &scope);
/// Each zone: what was matched, lost, unchanged and grown, the rates, the life and the rate criterion.
content::Block changes_table(const Scope &scope, Numbering &numbering);
/// What follows: the next look, and growth that is no corrosion.
std::vector<content::Block> changes_in_words(const Scope &scope);
/// Then against now, a panel a zone; nothing where nothing is matched.
std::vector<content::Block> changes_figure(const Scope &scope, Numbering &numbering);
/// Every place with its earlier figures, its rate and the life that is left.
content::Block places_table(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
