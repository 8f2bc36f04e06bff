#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/steel/survey/measurement.h"

/// A survey of another year, with its own datum and gauge. Its rows are named as this survey names them.
namespace strakebook::survey {

enum class Counts { aft, forward };
enum class StationsIn { metres, feet, frames };

/// Wherever something of an earlier survey has a station, its value is the distance along the hull from that survey's datum
/// and its raw text what was written there: of frames, the number of the frame.
struct EarlierDatum {
  Words from;                                ///< "after end of counter"
  Counts counts = Counts::aft;
  base::Measured zero;                       ///< where it counts from, as a station of this survey's datum
  std::optional<base::Measured> zero_within; ///< how near that is known
  StationsIn stations_in = StationsIn::metres;
  std::optional<base::Measured> frame_spacing; ///< where stations are frames
  base::SourceSpan span;
};

/// The file of its readings: always a grid.
struct EarlierReadings {
  Words file;
  std::optional<Separator> separator;
  base::Unit unit = base::Unit::millimetre;
  base::Located<int> stations, marks; ///< declared: lines of stations, marks planned
  base::SourceSpan span;
};

/// A pit of that survey, under the name that it had there.
struct EarlierPit {
  std::string id;
  Place at;
  base::Measured adjacent, depth;
  base::SourceSpan span;
  base::Length remaining() const { return adjacent.value - depth.value; }
};

struct EarlierSurvey {
  std::string id;
  base::Located<base::Date> inspected;
  Words number, by;
  Words source;                   ///< where its figures come from
  Words gauge;
  base::Length u;                 ///< standard uncertainty of its gauge
  std::optional<base::Length> depth_u; ///< of its pit depths; needed where it has pits
  Words u_basis;
  EarlierDatum datum;
  EarlierReadings readings;
  std::vector<Mark> marks;        ///< row by row, stations ascending; of its own plate, the least of the repeats counts
  std::vector<EarlierPit> pits;
  base::SourceSpan span;
};

} // namespace strakebook::survey
