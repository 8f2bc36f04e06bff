#pragma once

#include "strakebook/steel/assess/criteria.h"
#include "strakebook/steel/assess/readings.h"

/// Places of the hull as they are judged: what is left there, and how far that figure may be off.
namespace strakebook::assess {

/// The gauge that took a pit's depth; where the file names none, the most doubtful of all. nullptr: the survey lists no gauge.
const GaugeResult *depth_gauge(Gauges gauges, const survey::Pit &pit);

/// The thickness gauge that read the steel beside a pit.
struct GaugeBeside {
  const GaugeResult *gauge = nullptr; ///< nullptr: the survey lists no gauge
  bool chosen = false;                ///< taken as the most doubtful of several
};
/// The file does not say which gauge that was, so of those that may have been (see gauges_beside) it is the most doubtful.
GaugeBeside gauge_beside(const survey::Survey &survey, Gauges gauges, const survey::Pit &pit);

/// A mark that is used, with its gauge's doubt. A gauge that the survey does not list counts as the most doubtful one it does.
Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const MarkResult &mark);

/// A pit, with the doubt of its depth gauge and of the gauge beside it. The parts of both count for the degrees of freedom.
Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const PitResult &pit);

} // namespace strakebook::assess
