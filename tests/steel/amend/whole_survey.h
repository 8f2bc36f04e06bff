#pragma once

#include <filesystem>
#include <functional>

#include <catch2/catch.hpp>

#include "opened.h"
#include "strakebook/base/files.h"
#include "strakebook/base/yaml_tree.h"

/// The survey with every key that the reader knows, as a tree that tests change.
namespace strakebook::amend::testing {

using base::YamlNode;

inline base::FileSet whole_files() {
  const std::filesystem::path folder = STRAKEBOOK_TESTS "/steel/survey/whole";
  base::FileSet files;
  base::Diagnostics found;
  for (const auto &entry : std::filesystem::recursive_directory_iterator(folder))
    if (entry.is_regular_file()) files[entry.path().lexically_relative(folder).generic_string()] = base::read_file(entry.path(), 1 << 20, {}, found).value();
  return files;
}

inline YamlNode tree_of(const std::string &yaml) {
  base::Diagnostics found;
  auto tree = base::parse_yaml(std::make_shared<const base::SourceFile>(base::SourceFile{"survey.yaml", yaml}), found);
  REQUIRE(found.ok());
  return tree;
}

inline std::string quoted(const std::string &text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c == '\n' ? std::string("\\n") : std::string(1, c);
  }
  return out + "\"";
}

/// The tree as flow, every key and value in quotes: as far from how it was laid out as YAML goes.
inline std::string flow(const YamlNode &node) {
  std::string out;
  switch (node.kind) {
  case YamlNode::Kind::empty: return "~";
  case YamlNode::Kind::scalar: return quoted(node.text);
  case YamlNode::Kind::list:
    for (const auto &item : node.items) out += (out.empty() ? "" : ",\n") + flow(item);
    return "[" + out + "]";
  case YamlNode::Kind::map:
    for (const auto &entry : node.entries) out += (out.empty() ? "" : ",\n") + quoted(entry.key) + ": " + flow(entry.value);
    return "{" + out + "}";
  }
  return out;
}

using Path = std::vector<std::string>;
/// `holder` is the map or list that the scalar stands in.
using SeeLeaf = std::function<void(YamlNode &holder, YamlNode &leaf, const Path &path)>;

/// Every scalar, with the keys that lead to it; entries of a list are "-".
inline void each_leaf(YamlNode &holder, const SeeLeaf &see, Path path = {}) {
  const auto within = [&](YamlNode &node, const std::string &key) {
    Path below = path;
    below.push_back(key);
    if (node.kind == YamlNode::Kind::scalar) see(holder, node, below);
    else each_leaf(node, see, below);
  };
  for (auto &item : holder.items) within(item, "-");
  for (std::size_t i = 0; i < holder.entries.size(); ++i) within(holder.entries[i].value, holder.entries[i].key);
}

inline std::string text_of(const Path &path) {
  std::string out;
  for (const auto &key : path) out += (out.empty() ? "" : "/") + key;
  return out;
}

inline base::FileSet with_survey(base::FileSet files, const YamlNode &tree) {
  files["survey.yaml"] = flow(tree);
  return files;
}

} // namespace strakebook::amend::testing
