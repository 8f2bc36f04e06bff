#pragma once

#include <string>

#include "strakebook/base/yaml_tree.h"

namespace strakebook::base {

/// A tree as text that parse_yaml reads back as the same tree, but for places and for whether a text was quoted: one key or item a
/// line, keys in their order, no remarks, a text in quotes only where it would else be read as something different, one of several
/// lines as a block. Equal trees give equal text.
std::string yaml_text(const YamlNode &tree);

} // namespace strakebook::base
