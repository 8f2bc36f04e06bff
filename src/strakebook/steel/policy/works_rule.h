#pragma once

#include <string>

#include "strakebook/base/length.h"

namespace strakebook::policy {

/// Usual figures of plate work, by which schedule items are outlined and looked over.
struct WorksRule {
  std::string insert, overplate, pad;       ///< ids of the actions that let plate in, lay it over, and lay a small one over a pit
  base::Length least_side_plate;            ///< thickness of plate for a side
  base::Length least_lap, most_lap;         ///< of a doubler on to sound metal
  base::Length sound_under_lap;             ///< least remaining thickness that a lap may be welded to
  base::Length least_doubler, least_insert; ///< shortest edge
  base::Length least_pad;
  base::Length least_radius;                ///< of corners
  base::Length plug_pitch;                  ///< of the grid of plug welds
  base::Length plugs_over;                  ///< a doubler broader than this has plugs
  std::string source;
};

} // namespace strakebook::policy
