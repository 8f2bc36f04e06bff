#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// The steel to buy: places that do not meet their limit gathered into areas, and the quantities of the schedule.
namespace strakebook::works {

struct Works {
};

Works reckon(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Works &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Works &found);

} // namespace strakebook::works
