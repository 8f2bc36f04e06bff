#pragma once

#include "strakebook/steel/works/works.h"

namespace strakebook::works {

/// The areas of a survey, as Area says. By zone, then by first row and station; ids are numbered in that order.
std::vector<Area> areas_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy);

} // namespace strakebook::works
