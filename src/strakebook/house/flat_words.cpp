#include "strakebook/house/flat_words.h"

namespace strakebook::house {
namespace {

using base::YamlNode;

void collect(const YamlNode &node, const std::string &before, std::vector<YamlNode::Entry> &into) {
  for (const YamlNode::Entry &entry : node.entries) {
    const std::string key = before + entry.key;
    if (entry.value.kind == YamlNode::Kind::map)
      collect(entry.value, key + ".", into);
    else
      into.push_back({key, entry.key_span, entry.value});
  }
}

} // namespace

void flatten_words(YamlNode &tree) {
  for (YamlNode::Entry &entry : tree.entries) {
    if (entry.key != "words")
      continue;
    std::vector<YamlNode::Entry> flat;
    collect(entry.value, {}, flat);
    entry.value.entries = std::move(flat);
  }
}

} // namespace strakebook::house
