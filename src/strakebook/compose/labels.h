#pragma once

#include <map>
#include <string>

#include "strakebook/compose/voice.h"

namespace strakebook::compose {

/// Block id -> what a reference prints for it: a table's or figure's label, also for its rows and panels;
/// "photo 4", "item 1", "limitation 2" and "section 11" for the others.
std::map<std::string, std::string> names_of(const Scope &scope,
                                            const std::vector<content::Section> &sections);

} // namespace strakebook::compose
