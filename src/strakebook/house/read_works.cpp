#include "strakebook/house/bind.h"
#include "strakebook/house/read_policy.h"

/// Usual figures of plate work.
namespace strakebook::house {

void read_works(const YamlNode &node, policy::WorksRule &into, Diagnostics &sink) {
  Binding(sink)
      .need("least-side-plate", into.least_side_plate)
      .need("least-lap", into.least_lap)
      .need("most-lap", into.most_lap)
      .need("sound-under-lap", into.sound_under_lap)
      .need("least-doubler", into.least_doubler)
      .need("least-insert", into.least_insert)
      .need("least-pad", into.least_pad)
      .need("least-radius", into.least_radius)
      .need("plug-pitch", into.plug_pitch)
      .need("plugs-over", into.plugs_over)
      .need("source", into.source)
      .apply(node);
}

} // namespace strakebook::house
