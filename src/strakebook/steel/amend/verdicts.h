#pragma once

#include <vector>

#include "strakebook/steel/amend/amend.h"

/// What follows from the changes: verdicts, and decisions that are held to in spite of them.
namespace strakebook::amend {

/// Of zones that both surveys have, the verdicts that are not what they were. A zone's verdict under a criterion is the worst of its
/// subjects'; a criterion that is not in use, or a zone with nothing usable, gives not_applicable.
std::vector<Moved> moved_verdicts(const Edition &before, const Edition &after);

/// Of zones where a verdict moved, or what the ladder suggests is another, those whose decision has the same action, criterion and
/// claim. Without reasons.
std::vector<Stands> standing_decisions(const Edition &before, const Edition &after, const std::vector<Moved> &moved);

} // namespace strakebook::amend
