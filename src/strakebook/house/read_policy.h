#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/steel/policy/policy.h"

/// The `policy` of a merged layout.
namespace strakebook::house {

policy::Policy read_policy(const base::YamlNode &node, base::Diagnostics &sink);

// Parts of it, one file each.
void read_criteria(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
void read_tolerances(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);
/// The actions must have been read before.
void read_ladder(const base::YamlNode &node, policy::Policy &into, base::Diagnostics &sink);

} // namespace strakebook::house
