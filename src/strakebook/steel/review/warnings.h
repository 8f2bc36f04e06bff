#pragma once

#include "strakebook/steel/review/findings.h"

/// Warnings, and the survey's answers to them.
namespace strakebook::review {

/// Warnings among `so_far` that the survey does not acknowledge with a reason, each at its own place.
Findings unacknowledged(const Subject &subject, const base::Diagnostics &so_far);

/// Acknowledgements of what `so_far` does not report.
Findings acknowledged_for_nothing(const Subject &subject, const base::Diagnostics &so_far);

} // namespace strakebook::review
