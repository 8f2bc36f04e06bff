#pragma once

#include <span>

#include "strakebook/steel/assess/criteria.h"

namespace strakebook::assess {

/// Where the text of a rule can be read in more than one way: the places of a zone whose verdict another reading would change. The
/// verdicts themselves are given by the reading that rule_minimum() states.
std::vector<ReadOtherwise> read_otherwise(std::span<const Spot> places, std::span<const Limit> limits);

} // namespace strakebook::assess
