#include "strakebook/house/layout_file.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/house/bind.h"
#include "strakebook/house/flat_words.h"
#include "strakebook/house/merge.h"

namespace strakebook::house {
namespace {

namespace fs = std::filesystem;
using base::Code;

constexpr int layout_format = 1;

std::optional<YamlNode> load(const base::Folder &folder, const std::string &file, const base::SourceSpan &from,
                             Layer &layer, Diagnostics &sink) {
  const std::size_t before = sink.errors();
  const auto source = folder.source(file, from, sink);
  if (!source)
    return std::nullopt;
  YamlNode tree = base::parse_yaml(source, sink);
  if (sink.errors() != before)
    return std::nullopt;
  layer.inputs.push_back({"layout", (fs::path("layouts") / file).generic_string(),
                          base::sha256_hex(source->text), source->text.size(), 0, 0});
  flatten_words(tree);
  return tree;
}

/// Takes one of the head's own keys out of a tree.
std::optional<YamlNode> taken(YamlNode &tree, std::string_view key) {
  const auto at =
      std::find_if(tree.entries.begin(), tree.entries.end(), [&](const auto &e) { return e.key == key; });
  if (at == tree.entries.end())
    return std::nullopt;
  YamlNode value = std::move(at->value);
  tree.entries.erase(at);
  return value;
}

void check_format(YamlNode &tree, Diagnostics &sink) {
  const auto node = taken(tree, "layout");
  int format = 0;
  if (!node)
    sink.error(Code::missing_key, tree.span, "the file does not say which format of layout it is",
               "the format version", fmt::format("layout: {}", layout_format));
  else if (read(*node, format, sink) && format != layout_format)
    sink.error(Code::bad_version, node->span,
               fmt::format("layouts of format {} are not read by this program", format),
               fmt::format("format {}", layout_format), fmt::format("layout: {}", layout_format));
}

void join_part(const FoundLayout &found, const YamlNode &part, LayoutFile &into, Diagnostics &sink) {
  std::string relative;
  if (!read(part, relative, sink))
    return;
  if (!found.folder.holds(relative)) {
    sink.error(Code::path_escapes, part.span,
               fmt::format("\"{}\" is not a file in the folder of the layout", relative),
               "a path inside the folder of the layout");
    return;
  }
  if (const auto tree = load(found.folder, relative, part.span, into.layer, sink))
    join(into.layer.tree, *tree, sink);
}

} // namespace

std::optional<LayoutFile> read_layout_file(std::string name, const FoundLayout &found,
                                           const base::SourceSpan &from, Diagnostics &sink) {
  const std::size_t before = sink.errors();
  LayoutFile file;
  file.layer.name = std::move(name);
  auto tree = load(found.folder, found.file, from, file.layer, sink);
  if (!tree)
    return std::nullopt;
  file.top = tree->span;
  check_format(*tree, sink);
  if (const auto extends = taken(*tree, "extends")) {
    file.extends.span = extends->span;
    read(*extends, file.extends.value, sink);
  }
  const auto parts = taken(*tree, "parts");
  file.layer.tree = std::move(*tree);
  if (parts && parts->kind != YamlNode::Kind::list)
    sink.error(Code::wrong_kind, parts->span, "a list is needed here", "a list of files", "parts: [...]");
  if (parts)
    for (const YamlNode &part : parts->items)
      join_part(found, part, file, sink);
  if (sink.errors() != before)
    return std::nullopt;
  return file;
}

} // namespace strakebook::house
