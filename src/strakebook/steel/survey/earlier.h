#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/survey/measurement.h"

/// A survey of another year, with its own datum and gauge. Its rows are named as this survey names them.
namespace strakebook::survey {

enum class Counts { aft, forward };
enum class StationsIn { metres, feet, frames };

struct EarlierDatum {
  Words from;                                ///< "after end of counter"
  Counts counts = Counts::aft;
  base::Measured zero;                       ///< where it counts from, as a station of this survey's datum
  std::optional<base::Measured> zero_within; ///< how near that is known
  StationsIn stations_in = StationsIn::metres;
  std::optional<base::Measured> frame_spacing; ///< where stations are frames
  base::SourceSpan span;
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
  std::vector<Mark> marks;        ///< station as written there; read on the hull's own plate
  std::vector<Pit> pits;
  base::SourceSpan span;
};

} // namespace strakebook::survey
