#pragma once

#include <functional>
#include <map>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/paper/style/style.h"

namespace strakebook::house {

/// The `style` of a merged layout. Every name that a style uses (a face, a tone, a text style) and every name
/// that typesetting demands exists, or is reported.
style::Style read_style(const base::YamlNode &node, base::Diagnostics &sink);

// Parts of it, one file each; each reads into what was read before it.
void read_text_styles(const base::YamlNode &node, style::Style &into,
                      base::Diagnostics &sink); ///< `style` itself: families, text
void read_meanings(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
void read_tables(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
void read_keys(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
void read_setting(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
void read_masters(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
void read_lattices(const base::YamlNode &node, style::Style &into, base::Diagnostics &sink);
/// Names that typesetting demands, at the map that should hold them; and the ramp, which goes from dark to
/// light.
void check_style(const base::YamlNode &node, const style::Style &style, base::Diagnostics &sink);

} // namespace strakebook::house
