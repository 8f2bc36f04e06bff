#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// How surveys of different years are compared.
namespace strakebook::house {

void read_years(const YamlNode &node, policy::YearsRule &into, Diagnostics &sink) {
  Binding(sink)
      .need("match-radius", into.match_radius)
      .by("life-part", true, [&](const YamlNode &n) { read_true_part(n, into.life_part, sink); })
      .need("longest-months", into.longest_months)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
