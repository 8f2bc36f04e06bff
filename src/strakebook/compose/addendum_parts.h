#pragma once

#include "strakebook/compose/voice.h"

/// The parts of an addendum, one file each.
namespace strakebook::compose {

/// Each item that the addendum speaks of: what was asked, what became of it, its evidence, its new readings.
std::vector<content::Block> closed_items(const Scope &scope, const survey::Addendum &addendum);
/// The new readings of one item, each with the limit of its zone and its verdict; no blocks where there are none.
std::vector<content::Block> new_readings(const Scope &scope, const survey::Addendum &addendum, const survey::ClosedItem &item);
/// What the limits and verdicts beside new readings rest on; no blocks where no reading was taken.
std::vector<content::Block> new_readings_note(const Scope &scope, const survey::Addendum &addendum);
/// Items of the report that no addendum up to this one has closed.
std::vector<content::Block> items_left(const Scope &scope, const survey::Addendum &addendum);

} // namespace strakebook::compose
