#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"
#include "strakebook/steel/works/works.h"

/// How she would float with the steel that the schedule adds. Not a stability assessment.
namespace strakebook::afloat {

struct Afloat {
};

Afloat float_with(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy, const works::Works &works);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Afloat &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Afloat &found);

} // namespace strakebook::afloat
