#pragma once

#include <string>

#include "strakebook/report.h"

namespace strakebook::cli {

/// The assessment for a person at a terminal: coverage, then each zone with its subjects against every criterion.
std::string assessment_text(const survey::Survey &survey, const assess::Assessment &assessment);

} // namespace strakebook::cli
