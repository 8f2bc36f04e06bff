#pragma once

#include <vector>

#include "strakebook/steel/survey/reading.h"

/// Figures that their unit makes impossible, and the unit that would make them possible.
namespace strakebook::survey {

/// True for a length above the thickest plate, and for a figure in inches or thou that took its unit from the declaration
/// and is thinner than any gauge reads.
bool impossible_plate(const base::Measured &reading);

/// The figure of `reading` in the other units of thickness (mm, in, thou), those that make it from `least` to `most`. A
/// fraction, or a figure with its unit beside it, means no other.
std::vector<base::Measured> in_other_units(const base::Measured &reading, base::Length least, base::Length most);

/// Reports reading_implausible, with what the figure can only be and how that is written.
void refuse_plate(Reading &reading, const base::Measured &figure, const base::SourceSpan &span);

} // namespace strakebook::survey
