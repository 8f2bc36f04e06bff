#pragma once

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/house/house.h"

namespace strakebook::house {

/// Everything of a merged layout that is said: language, firm, words, sections, cautions, jurisdiction,
/// glossary, months. Sections name page masters of `style`.
Wording read_wording(const base::YamlNode &tree, const style::Style &style, base::Diagnostics &sink);

/// How figures are reckoned; {steel} in a formula's text is filled with `steel`, the policy's weight of steel. Reports a symbol
/// that is not explained and an explanation without its symbol.
std::map<std::string, Formula> read_formulas(const base::YamlNode &node, const std::string &steel, base::Diagnostics &sink);

} // namespace strakebook::house
