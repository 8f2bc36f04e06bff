#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/house/house.h"

namespace strakebook::house {

/// The `issue` of a merged layout.
IssueRule read_issue(const base::YamlNode &node, base::Diagnostics &sink);

} // namespace strakebook::house
