#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Coating and anodes.
namespace strakebook::house {

namespace {

void read_metal(const YamlNode &node, policy::AnodeMetal &into, Diagnostics &sink) {
  Binding(sink)
      .by("capacity", true, [&](const YamlNode &n) { read_above_nought(n, into.capacity, sink); })
      .need("waters", into.waters)
      .need("source", into.source)
      .apply(node);
}

void read_utilisation(const YamlNode &node, base::Decimal &into, Diagnostics &sink) {
  read_above_nought(node, into, sink);
  if (into.ratio() > base::Ratio{1, 1})
    sink.error(base::Code::out_of_range, node.span, "no more than all of an anode can be used", "1 at most");
}

} // namespace

void read_protection(const YamlNode &node, policy::ProtectionRule &into, Diagnostics &sink) {
  Binding(sink)
      .by("metals", true,
          [&](const YamlNode &n) {
            each_entry(n, sink, [&](const YamlNode::Entry &entry) { read_metal(entry.value, into.metals[entry.key], sink); });
          })
      .by("utilisation", true, [&](const YamlNode &n) { read_utilisation(n, into.utilisation, sink); })
      .need("unworn-percent", into.unworn_percent)
      .need("unworn-months", into.unworn_months)
      .need("recoat-interval", into.recoat_interval)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
