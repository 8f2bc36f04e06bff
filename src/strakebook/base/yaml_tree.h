#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/source.h"

namespace strakebook::base {

/// A YAML value with its place. Plain data, built from parser events; scalars keep their raw text.
struct YamlNode {
  enum class Kind { scalar, list, map, empty };
  struct Entry; // a key of a map

  Kind kind = Kind::empty;
  std::string text;    ///< scalar: its value
  bool quoted = false; ///< scalar: written with quotes or as a block text
  SourceSpan span;     ///< scalar: the text; list and map: their first line, or the key that holds them
  std::vector<YamlNode> items;
  std::vector<Entry> entries;

  const YamlNode *find(std::string_view key) const; ///< value of a key of a map; nullptr if absent
};

struct YamlNode::Entry {
  std::string key;
  SourceSpan key_span;
  YamlNode value;
};

struct YamlLimits {
  int depth = 32;
  std::size_t bytes = 32u << 20;
  std::size_t nodes = 1'000'000; ///< keys, values, maps and lists together; each costs about 200 bytes
};

/// Parses one document strictly: UTF-8 (checked before parsing), end reached, no duplicate keys, no anchors, aliases,
/// merge keys or tags, bounded depth and size. Everything wrong is added to `sink`; what could be read is returned (of a
/// key written twice, the first). A text that cannot be read to its end gives an empty node, so that no key is then called
/// missing that stands below: look at sink.ok() before reading on.
/// An empty scalar (nothing written, ~ or null) has kind empty.
YamlNode parse_yaml(const SourcePtr &file, Diagnostics &sink, YamlLimits limits = {});

} // namespace strakebook::base
