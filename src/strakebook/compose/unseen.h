#pragma once

#include "strakebook/compose/voice.h"

/// What is said of the plate between the marks: a part of the results.
namespace strakebook::compose {

/// Under a heading of its own: coverage, what the tolerance limits mean, and the deepest pit to expect in each zone that was
/// looked over in blocks.
std::vector<content::Block> between_the_marks(const Scope &scope, Numbering &numbering);

/// The deepest pit to expect, zone by zone; why there is none where there is none.
std::vector<content::Block> pits_to_expect(const Scope &scope, Numbering &numbering);

/// Block maxima and the law fitted to them on extreme value paper. The zone has such a law.
content::Block maxima_figure(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const unseen::Expected &expected);

std::string mm_near(double mm); ///< two decimals, to the nearest: "1.53"
std::string mm_up(double mm);   ///< the same, never less than it is
std::string mm_down(double mm); ///< the same, never more than it is

} // namespace strakebook::compose
