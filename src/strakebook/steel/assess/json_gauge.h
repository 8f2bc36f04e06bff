#pragma once

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/gauge_result.h"

namespace strakebook::assess {

/// A gauge as the assessment's JSON gives it: lengths as decimal strings in mm, ratios as fractions. Its corrections carry what
/// each makes of the lowest reading.
nlohmann::ordered_json gauge_json(const GaugeResult &gauge);

} // namespace strakebook::assess
