#pragma once

#include "strakebook/compose/voice.h"

/// How she floats before and after the steel of the schedule, marked as no stability assessment.
namespace strakebook::compose {

/// A table where steel is added; where only the figures as found are given, those; else blocks of nothing. Chapter 15 shows it
/// after the schedule.
content::Block afloat_table(const Scope &scope, Numbering &numbering);

/// A figure that nothing turns on, with so many decimals: "29.6". The minus is U+2212.
std::string to_places(double value, int places);
/// A height above the water in whole mm, or as many more decimals as keep it clear of the least that the house asks after.
std::string height_text(Length height, Length least);

} // namespace strakebook::compose
