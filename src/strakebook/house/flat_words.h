#pragma once

#include "strakebook/base/yaml_tree.h"

namespace strakebook::house {

/// Turns the nested maps under `words` into one map of dotted keys: {labels: {foot: x}} -> {labels.foot: x}.
void flatten_words(base::YamlNode &tree);

} // namespace strakebook::house
