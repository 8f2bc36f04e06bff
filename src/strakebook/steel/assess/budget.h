#pragma once

#include <span>

#include "strakebook/steel/assess/doubt.h"
#include "strakebook/steel/assess/gauge_result.h"
#include "strakebook/steel/survey/measurement.h"

/// A gauge's doubt from its parts, as the GUM combines them (JCGM 100:2008).
namespace strakebook::assess {

/// The parts of a gauge's budget, or its stated u as the only one. Half a width a stands for a rectangular distribution,
/// u = a / sqrt 3 (4.3.7); a share is taken of `thickest`. std::logic_error for a gauge with neither: its reader refuses it.
std::vector<DoubtPart> doubt_parts(const survey::Gauge &gauge, Length thickest);

/// Root of the sum of the squares (5.1.2, the parts taken as independent), rounded up to the next nanometre.
Length combined(std::span<const DoubtPart> parts);

/// Effective degrees of freedom by Welch-Satterthwaite (G.4.1, equation G.2b), exact, truncated to a whole number; nullopt:
/// infinite, or beyond a thousand million, where Student's factor no longer differs in its third decimal.
std::optional<std::int64_t> effective_degrees(std::span<const DoubtPart> parts);

/// Student's one-sided quantile at `coverage` (0.95), rounded up to three decimals. coverage under 1, degrees 1 or more.
base::Decimal student_factor(Ratio coverage, std::int64_t degrees);

/// What u is multiplied by: Student's factor at the rule's coverage for finite degrees, never under the rule's band; the band
/// itself where the degrees are infinite, or where it is 0, which is simple acceptance.
base::Decimal factor_for(const policy::DecisionRule &rule, std::optional<std::int64_t> degrees);

} // namespace strakebook::assess
