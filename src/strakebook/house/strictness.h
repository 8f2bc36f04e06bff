#pragma once

#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"

/// What a layout may do to the one it extends: add, reword and tighten; never drop, re-order or loosen. The
/// rules are tables of paths in strictness.cpp.
namespace strakebook::house {

using Path = std::vector<std::string>; ///< keys from the top: {"policy", "doubt", "band"}

/// A list of requirements: what an extending layout writes is added to it.
bool grows(const Path &path);

/// May this value stand in place of that one? Reports thresholds moved the lax way, answers turned the lax
/// way, and wordings with place holders that the base's wording does not have.
bool may_replace(const base::YamlNode &base, const base::YamlNode &over, const Path &path,
                 base::Diagnostics &sink);

/// May this new entry join the map? Reports names that nothing would use, attempts to drop or re-order, and
/// added sections that lack words or a place.
bool may_be_added(const base::YamlNode &base, const base::YamlNode::Entry &entry, const Path &path,
                  base::Diagnostics &sink);

/// A changed criterion, ladder, tolerance or rule names its source anew.
void check_sourced(const base::YamlNode &base, const base::YamlNode &over, const Path &path,
                   base::Diagnostics &sink);

} // namespace strakebook::house
