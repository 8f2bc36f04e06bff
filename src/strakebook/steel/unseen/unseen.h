#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"

/// What a survey says of the plate that nobody measured: coverage, the deepest pit to expect, and where it says nothing.
namespace strakebook::unseen {

struct Unseen {
};

Unseen unseen(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Unseen &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Unseen &found);

} // namespace strakebook::unseen
