#pragma once

#include <span>

#include "strakebook/steel/assess/assessment.h"

/// The instruments: their doubt and their checks, computed once for everybody who asks.
namespace strakebook::assess {

/// One result for each gauge, same order.
std::vector<GaugeResult> gauge_results(const survey::Survey &survey, const policy::Policy &policy);

/// Ids of the gauges that may have read the plate beside a pit. The file does not say which did, so they are those that read a
/// mark of the pit's row; where none did, those that read any mark; where none did that either, all.
std::vector<std::string> gauges_beside(const survey::Survey &survey, const survey::Pit &pit);

} // namespace strakebook::assess
