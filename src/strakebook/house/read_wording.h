#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/house/house.h"

namespace strakebook::house {

/// Everything of a merged layout that is said: language, firm, words, sections, cautions, jurisdiction,
/// glossary, months. Sections name page masters of `style`.
Wording read_wording(const base::YamlNode &tree, const style::Style &style, base::Diagnostics &sink);

} // namespace strakebook::house
