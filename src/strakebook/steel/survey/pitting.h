#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

/// Pitting of a zone by the numbers that the survey states.
namespace strakebook::survey {

/// The doubler in whose plate a pit lies; empty: none. The inside face under a doubler is the hull's own plate.
std::string doubler_of(const Survey &survey, const Pit &pit);

/// The pits of the hull's own plate listed on the rows of a zone, in the order of the file.
std::vector<const Pit *> pits_of(const Survey &survey, std::string_view zone);

/// Least distance along the hull between two pits listed in one row of the zone; across rows it is not known. nullopt: no
/// row of the zone has two.
std::optional<base::Length> spacing_of_pits(const Survey &survey, std::string_view zone);

/// Pitting intensity: the greatest share of the area that is stated for the zone, by its declaration or about one of its
/// pits, in percent. nullopt: none is stated.
std::optional<base::Decimal> pitting_intensity(const Survey &survey, const Zone &zone);

/// The intensity is over the rule's share, and fewer pits are listed than the rule asks to be measured.
bool too_few_pits_measured(const Survey &survey, const Zone &zone, const policy::PittingRule &rule);

/// Warns of a declared count that is not the number of pits listed, and of too few pits measured.
void warn_of_pitting(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink);

} // namespace strakebook::survey
