#include "strakebook/house/bind.h"

#include <algorithm>

#include <fmt/format.h>

namespace strakebook::house {
namespace {

using base::Code;

bool is_map(const YamlNode &node, Diagnostics &sink) {
  if (node.kind == YamlNode::Kind::map)
    return true;
  const bool empty = node.kind == YamlNode::Kind::empty;
  sink.error(empty ? Code::empty_value : Code::wrong_kind, node.span,
             empty ? "nothing is written here" : "names and values are needed here",
             "a map of names and values");
  return false;
}

} // namespace

bool Binding::apply(const YamlNode &node) const {
  if (!is_map(node, sink_))
    return false;
  std::vector<std::string> keys;
  for (const Field &field : fields_)
    keys.emplace_back(field.key);
  for (const auto &entry : node.entries) {
    const auto field =
        std::find_if(fields_.begin(), fields_.end(), [&](const Field &f) { return f.key == entry.key; });
    if (field == fields_.end())
      refuse_unknown(sink_, Code::unknown_key, entry.key_span, entry.key, "a key", keys);
    else
      field->take(entry.value);
  }
  for (const Field &field : fields_)
    if (field.needed && !node.find(field.key))
      sink_.error(Code::missing_key, node.span, fmt::format("the key \"{}\" is missing here", field.key),
                  fmt::format("a value for {}", field.key), fmt::format("{}: ...", field.key));
  return true;
}

void each_entry(const YamlNode &node, Diagnostics &sink,
                const std::function<void(const YamlNode::Entry &)> &take) {
  if (!is_map(node, sink))
    return;
  for (const auto &entry : node.entries)
    take(entry);
}

std::vector<const YamlNode::Entry *> in_order(const YamlNode &node, Diagnostics &sink) {
  std::vector<const YamlNode::Entry *> order, moved;
  each_entry(node, sink,
             [&](const YamlNode::Entry &e) { (e.value.find("after") ? moved : order).push_back(&e); });
  for (const YamlNode::Entry *entry : moved) {
    const YamlNode &after = *entry->value.find("after");
    const auto at =
        std::find_if(order.begin(), order.end(), [&](const auto *e) { return e->key == after.text; });
    if (at != order.end()) {
      order.insert(at + 1, entry);
      continue;
    }
    std::vector<std::string> names;
    for (const auto *e : order)
      names.push_back(e->key);
    refuse_unknown(sink, Code::unknown_word, after.span, after.text, "a name", names);
  }
  return order;
}

} // namespace strakebook::house
