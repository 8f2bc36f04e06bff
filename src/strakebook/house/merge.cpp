#include "strakebook/house/merge.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/house/strictness.h"
#include "strakebook/house/unknown_name.h"

namespace strakebook::house {
namespace {

using base::Code;
using base::Diagnostics;
using base::YamlNode;
using Kind = YamlNode::Kind;

YamlNode::Entry *entry_of(YamlNode &map, std::string_view key) {
  const auto at =
      std::find_if(map.entries.begin(), map.entries.end(), [&](const auto &e) { return e.key == key; });
  return at == map.entries.end() ? nullptr : &*at;
}

std::string_view name_of(Kind kind) {
  return kind == Kind::map ? "names and values" : kind == Kind::list ? "a list" : "a single value";
}

void grow(YamlNode &list, const YamlNode &more) {
  for (const YamlNode &item : more.items) {
    const auto same = [&](const YamlNode &n) { return n.text == item.text; };
    if (std::none_of(list.items.begin(), list.items.end(), same))
      list.items.push_back(item);
  }
}

void lay_value(YamlNode &base, const YamlNode &over, const Path &path, Diagnostics &sink);

void lay_map(YamlNode &base, const YamlNode &over, const Path &path, Diagnostics &sink) {
  check_sourced(base, over, path, sink);
  for (const YamlNode::Entry &entry : over.entries) {
    Path below = path;
    below.push_back(entry.key);
    if (YamlNode::Entry *known = entry_of(base, entry.key))
      lay_value(known->value, entry.value, below, sink);
    else if (may_be_added(base, entry, below, sink))
      base.entries.push_back(entry);
  }
}

void lay_value(YamlNode &base, const YamlNode &over, const Path &path, Diagnostics &sink) {
  if (over.kind == Kind::empty || (over.kind == Kind::scalar && over.text.empty())) {
    sink.error(Code::layout_loosens, over.span,
               fmt::format("\"{}\" empties what the base gives", path.back()),
               "other words or values; nothing can be taken away");
  } else if (base.kind != over.kind) {
    sink.error(Code::wrong_kind, over.span, fmt::format("{} is written here", name_of(over.kind)),
               fmt::format("{}, as the base has it", name_of(base.kind)));
  } else if (over.kind == Kind::map) {
    lay_map(base, over, path, sink);
  } else if (grows(path)) {
    grow(base, over);
  } else if (may_replace(base, over, path, sink)) {
    base = over;
  }
}

} // namespace

void join(YamlNode &into, const YamlNode &part, Diagnostics &sink) {
  for (const YamlNode::Entry &entry : part.entries) {
    YamlNode::Entry *known = entry_of(into, entry.key);
    if (!known)
      into.entries.push_back(entry);
    else if (known->value.kind == Kind::map && entry.value.kind == Kind::map)
      join(known->value, entry.value, sink);
    else
      sink.error(Code::yaml_duplicate_key, entry.key_span,
                 fmt::format("\"{}\" is written in another part of this layout too (line {})", entry.key,
                             known->key_span.line),
                 "each value once");
  }
}

void lay_over(YamlNode &base, const YamlNode &over, Diagnostics &sink) { lay_map(base, over, {}, sink); }

} // namespace strakebook::house
