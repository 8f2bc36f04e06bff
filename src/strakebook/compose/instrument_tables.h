#pragma once

#include "strakebook/compose/voice.h"

/// The tables of the instruments chapter.
namespace strakebook::compose {

/// Budgets of doubt, one group a gauge that gives one; nothing where none does.
std::vector<content::Block> budgets(const Scope &scope, Numbering &numbering);
/// Figures shown on the block; nothing where no gauge has to be checked.
std::vector<content::Block> block_checks(const Scope &scope, Numbering &numbering);
/// Which gauges are indicative and why; what their lowest figures may stand for; what is to be retaken.
std::vector<content::Block> indicative_gauges(const Scope &scope, Numbering &numbering);
/// How repeats become one figure, how many lie apart, and what was read single echo.
std::vector<content::Block> reduction_and_surfaces(const Scope &scope);

inline constexpr int places_of_u = 4; ///< decimals of a doubt in a budget

/// "ultrasonic thickness gauge", or the id of a gauge without a name.
std::string gauge_name(const survey::Gauge &gauge);

} // namespace strakebook::compose
