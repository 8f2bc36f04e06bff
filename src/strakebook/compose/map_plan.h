#pragma once

#include <string_view>
#include <vector>

#include "strakebook/compose/hull.h"

/// Where the rows of the unrolled hull stand on its map. y runs up, one row is one unit. Each row has its mark line, a lane for
/// pits below it, and a lane below that which the row shares with the next one: labels of its pits and words of its marks not
/// read, photographs of the next row.
namespace strakebook::compose {

struct MapLine {
  const survey::Row *row;
  double y, figures, pit_lane, lane_above, lane_below, words; ///< figures: above their marks, where there is no room beside them; words: close under their crosses
};

/// A strip of the hull: port, bottom or starboard.
struct MapStrip {
  Strip strip;
  double low, high;
};

struct MapPlan {
  std::vector<MapLine> lines;
  std::vector<MapStrip> strips;
  double height = 0;
  double spacing = 1;   ///< metres between marks, as the survey plans them
  double sign_half = 0; ///< metres: half of a sign, as wide as it is on paper
  double area_half = 0;  ///< rows: how far an area reaches over and under its lines
  bool figures_above = false; ///< of all marks: on the narrow map of a zone
  Reach1D hull;
};

/// The rows of a zone, or of the whole shell (empty), drawn as wide as `drawn` on paper.
MapPlan map_plan(const Scope &scope, std::string_view zone, base::Pt drawn);

const MapLine *line_of(const MapPlan &plan, std::string_view row); ///< nullptr: not on this map

/// The area of a reach on every strip that it touches: one box from its first row to its last.
void add_reach(Drawing &to, const Scope &scope, const MapPlan &plan, const survey::Reach &reach, const std::string &meaning);

} // namespace strakebook::compose
