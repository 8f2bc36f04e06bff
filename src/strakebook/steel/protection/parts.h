#pragma once

#include "strakebook/steel/protection/protection.h"

/// Parts of protection::reckon.
namespace strakebook::protection {

Scheme reckon(const survey::CoatingScheme &scheme);
Anodes reckon(const survey::AnodePlan &plan, const policy::ProtectionRule &rule);
std::optional<Width> width_of(const survey::Survey &survey, const policy::Policy &policy);

} // namespace strakebook::protection
