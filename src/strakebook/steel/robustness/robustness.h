#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"

/// Whether a verdict stays when limit, original thickness and doubt move inside their ranges.
namespace strakebook::robustness {

struct Robustness {
};

Robustness robustness(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths as decimal strings in mm.
nlohmann::ordered_json json(const Robustness &found);

} // namespace strakebook::robustness
