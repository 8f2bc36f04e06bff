#pragma once

#include "strakebook/compose/hull.h"

/// The parts of the shell expansion.
namespace strakebook::compose {

/// The hull unrolled with every mark, pit, doubler, photograph and unseen area.
Drawing map_of_marks(const Scope &scope);
/// The same for a large hull: a cell a bay and strake, toned by its lesser plate reading, from bay `first` up to `last`.
Drawing map_of_bays(const Scope &scope, int first, int last);

/// Whether the marks stand too close on paper to be shown one by one.
bool needs_bays(const Scope &scope);
int bay_of(const Scope &scope, const base::Measured &station);
int bay_count(const Scope &scope);

/// The tones of the ramp with the bands they stand for.
Drawing ramp_legend(const Scope &scope);
/// Whether no mark or pit falls short of the limit it is measured against, or is too close to it to call.
bool all_met(const Scope &scope);
/// Marks and pits that do not meet the limit that they are measured against, least first.
content::Block not_met_list(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
