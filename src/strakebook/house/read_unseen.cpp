#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// What may be said of plate that nobody measured.
namespace strakebook::house {

void read_unseen(const YamlNode &node, policy::UnseenRule &into, Diagnostics &sink) {
  const auto part = [&sink](base::Ratio &share) { return [&](const YamlNode &n) { read_true_part(n, share, sink); }; };
  Binding(sink)
      .need("least-blocks", into.least_blocks)
      .by("confidence", true, part(into.confidence))
      .by("significance", true, part(into.significance))
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
