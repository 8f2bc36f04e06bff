#pragma once

#include "strakebook/compose/sketch.h"
#include "strakebook/compose/thickness.h"

/// The outline of the hull as figures unroll it: port, bottom, starboard, bow at the left, seen from outside.
namespace strakebook::compose {

/// Which strip of the unrolled hull a row lies on.
enum class Strip { port, bottom, starboard };
Strip strip_of(const Scope &scope, const survey::Row &row);
std::string strip_head(const Scope &scope, Strip strip); ///< "Port"

/// Metres from the datum to either end.
struct Reach1D { double from = 0, to = 0; };
Reach1D hull_extent(const Scope &scope);
/// Stations are counted from the stern, so that figures with the bow at the left turn them round.
bool counted_forward(const Scope &scope);
/// Where a station stands in a figure with the bow at the left; metres from the datum.
double from_bow(const Scope &scope, double metres);
/// The stations of a reach as they stand in such a figure; without its own ends, the whole hull.
Reach1D stations_of_reach(const Scope &scope, const survey::Reach &reach);

/// Closed outline of a strip between y low and high: raked stem, square counter; the bottom pointed at both ends.
std::vector<XY> strip_outline(Strip strip, Reach1D hull, double low, double high);

/// Rows that a reach names, or all rows of its zone, or all.
std::vector<const survey::Row *> rows_of_reach(const Scope &scope, const survey::Reach &reach);

/// The side of the hull as the camera faced it, with the place and the direction of looking.
Drawing locator_strip(const Scope &scope, const survey::Photo &photo);

std::string station_title(const Scope &scope); ///< "station, m"

/// Ticks every metre (or foot, as stations were noted), and as many numbers at round stations as `most_numbers` allows.
content::Axis hull_axis(const Scope &scope, content::Axis::Side side, double at, double mirrored_about = 0, int most_numbers = 8);

} // namespace strakebook::compose
