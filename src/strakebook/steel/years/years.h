#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// Surveys of other years at the same places: rates, the life left, the next look.
namespace strakebook::years {

struct History {
};

History compare(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const History &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const History &found);

} // namespace strakebook::years
