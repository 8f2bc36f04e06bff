#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// What floating is reckoned with.
namespace strakebook::house {

void read_afloat(const YamlNode &node, policy::AfloatRule &into, Diagnostics &sink) {
  Binding(sink)
      .by("waters", true,
          [&](const YamlNode &n) {
            each_entry(n, sink, [&](const YamlNode::Entry &entry) { read(entry.value, into.waters[entry.key], sink); });
          })
      .need("least-freeboard", into.least_freeboard)
      .need("least-downflooding", into.least_downflooding)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
