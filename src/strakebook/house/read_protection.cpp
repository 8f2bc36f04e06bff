#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Coating and anodes.
namespace strakebook::house {

namespace {

void read_metal(const YamlNode &node, policy::AnodeMetal &into, Diagnostics &sink) {
  Binding(sink).need("capacity", into.capacity).need("waters", into.waters).need("source", into.source).apply(node);
}

} // namespace

void read_protection(const YamlNode &node, policy::ProtectionRule &into, Diagnostics &sink) {
  Binding(sink)
      .by("metals", true,
          [&](const YamlNode &n) {
            each_entry(n, sink, [&](const YamlNode::Entry &entry) { read_metal(entry.value, into.metals[entry.key], sink); });
          })
      .need("utilisation", into.utilisation)
      .need("unworn-percent", into.unworn_percent)
      .need("unworn-months", into.unworn_months)
      .need("recoat-interval", into.recoat_interval)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
