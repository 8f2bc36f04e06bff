#pragma once

#include <functional>
#include <set>
#include <string>

#include "strakebook/steel/survey/survey.h"

namespace strakebook::survey {

/// Photographs that a finding, a piece of evidence, an addendum or prose refers to.
std::set<std::string, std::less<>> photos_used(const Survey &survey);

} // namespace strakebook::survey
