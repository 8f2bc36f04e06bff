#include <fmt/format.h>

#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// What floating is reckoned with.
namespace strakebook::house {

void read_above_nought(const YamlNode &node, base::Decimal &into, Diagnostics &sink) {
  base::Decimal value;
  if (!read(node, value, sink))
    return;
  if (value.digits > 0)
    into = value;
  else
    sink.error(base::Code::out_of_range, node.span, fmt::format("nothing can be divided by {}", node.text), "more than 0");
}

void read_afloat(const YamlNode &node, policy::AfloatRule &into, Diagnostics &sink) {
  Binding(sink)
      .by("waters", true,
          [&](const YamlNode &n) {
            each_entry(n, sink,
                       [&](const YamlNode::Entry &entry) { read_above_nought(entry.value, into.waters[entry.key], sink); });
          })
      .need("least-freeboard", into.least_freeboard)
      .need("least-downflooding", into.least_downflooding)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
