#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"

namespace strakebook::house {

/// Joins a part of a layout to the rest of the same layout: maps grow together, a value written twice is an
/// error.
void join(base::YamlNode &into, const base::YamlNode &part, base::Diagnostics &sink);

/// Lays a layout over the one it extends, key by key: maps merge, single values and lists are replaced, lists
/// of requirements grow. What drops, empties, re-orders or loosens is refused (see strictness.h).
void lay_over(base::YamlNode &base, const base::YamlNode &over, base::Diagnostics &sink);

} // namespace strakebook::house
