#pragma once

#include "strakebook/compose/decision.h"

/// Parts of what a decision page says of robustness.
namespace strakebook::compose {

std::string tried_limit(Length limit); ///< "3.0", "3.225"

/// Whether every combination that was tried at any place of the zone gives the zone's verdict.
bool all_alike(const robustness::InZone &zone);

/// Whether a sentence says enough: the original is known well enough, every criterion that applies is met at every place of the
/// zone, and the verdict that governs turns nowhere.
bool says_enough(const Judged &judged, const robustness::InZone &zone);

/// How the zone's verdict stands when one thing moves.
Sentence robustness_sentence(const Scope &scope, const Judged &judged, const robustness::InZone &zone);

} // namespace strakebook::compose
