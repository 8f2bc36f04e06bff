#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// Coating and anodes: how much of what.
namespace strakebook::protection {

struct Protection {
};

Protection reckon(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Protection &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Protection &found);

} // namespace strakebook::protection
