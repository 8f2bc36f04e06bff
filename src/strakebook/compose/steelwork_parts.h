#pragma once

#include "strakebook/compose/voice.h"

/// Parts of the schedule of steelwork, each written by a file of its own.
namespace strakebook::compose {

/// A station as the datum counts them, to two decimals at most: "9.5".
std::string station_text(const Scope &scope, Length station);
/// "frame 20, 120 mm aft of it".
std::string frame_text(const Scope &scope, const works::NearestFrame &frame);

/// What the yard prices, one row an item.
content::Block schedule(const Scope &scope, Numbering &numbering);
/// A sketch of each plate whose sides are given, to a scale that stands over it.
std::vector<content::Block> sketches(const Scope &scope, Numbering &numbering);
/// Places that do not meet their limit, gathered into areas; and what covering each would weigh.
std::vector<content::Block> areas_gathered(const Scope &scope, Numbering &numbering);

} // namespace strakebook::compose
