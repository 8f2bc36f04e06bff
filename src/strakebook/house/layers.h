#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/folder.h"
#include "strakebook/base/input_file.h"
#include "strakebook/base/yaml_tree.h"

/// From the name of a layout to the trees that it is made of.
namespace strakebook::house {

/// One layout: its file and its parts joined into one tree of content (no `layout`, `extends` or `parts`).
struct Layer {
  std::string name;
  base::YamlNode tree;
  std::vector<base::InputFile> inputs;
};

struct Folders {
  base::Folder installed; ///< where the base is
  base::Folder own;       ///< the survey's layouts; need not exist
};

/// The layout called `name` and everything that it extends, the base first. Only a layout among the installed
/// ones may extend nothing, so that no survey leaves the base behind. nullopt: what is wrong is in the sink.
std::optional<std::vector<Layer>> layers_of(std::string_view name, const Folders &folders,
                                            const base::SourceSpan &from, base::Diagnostics &sink);

} // namespace strakebook::house
