#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Over which ranges a verdict is tried.
namespace strakebook::house {

void read_robustness(const YamlNode &node, policy::RobustnessRule &into, Diagnostics &sink) {
  Binding(sink)
      .need("limits", into.limits)
      .need("losses", into.losses)
      .need("doubts", into.doubts)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
