#pragma once

#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/quantity/quantity.h"
#include "strakebook/steel/unseen/coverage.h"
#include "strakebook/steel/unseen/pit_depths.h"

/// What a survey says of the plate that nobody measured: coverage, the deepest pit to expect, and where it says nothing.
namespace strakebook::unseen {

struct ZoneUnseen {
  Coverage coverage;
  std::optional<PitDepths> pits; ///< absent: the zone gives no blocks
};

struct Unseen {
  std::vector<ZoneUnseen> zones; ///< one for each Survey::zones, same order
  Coverage whole;
};

Unseen unseen(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

/// All of it for programs; lengths of steel and of gaps as decimal strings in mm, what is fitted as numbers in mm.
nlohmann::ordered_json json(const Unseen &found);

/// What a reader may want to check, with formula and inputs.
std::vector<quantity::Quantity> quantities(const Unseen &found);

} // namespace strakebook::unseen
