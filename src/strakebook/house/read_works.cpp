#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Usual figures of plate work.
namespace strakebook::house {

void read_works(const YamlNode &node, policy::Policy &into, Diagnostics &sink) {
  policy::WorksRule &rule = into.works;
  const auto action = [&](std::string &id) {
    return [&](const YamlNode &n) {
      if (read(n, id, sink))
        known_in(into.actions, id, "an action", n.span, sink);
    };
  };
  Binding(sink)
      .by("insert", true, action(rule.insert))
      .by("overplate", true, action(rule.overplate))
      .by("pad", true, action(rule.pad))
      .need("least-side-plate", rule.least_side_plate)
      .need("least-lap", rule.least_lap)
      .need("most-lap", rule.most_lap)
      .need("sound-under-lap", rule.sound_under_lap)
      .need("least-doubler", rule.least_doubler)
      .need("least-insert", rule.least_insert)
      .need("least-pad", rule.least_pad)
      .need("least-radius", rule.least_radius)
      .need("plug-pitch", rule.plug_pitch)
      .need("plugs-over", rule.plugs_over)
      .need("source", rule.source)
      .apply(node);
}

} // namespace strakebook::house
