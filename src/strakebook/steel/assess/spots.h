#pragma once

#include <span>

#include "strakebook/steel/assess/criteria.h"

/// Places of the hull as they are judged: what is left there, and how far that figure may be off.
namespace strakebook::assess {

/// A mark that is used, with its gauge's doubt. A gauge that the survey does not list counts as the most doubtful one it does.
Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, std::span<const GaugeResult> gauges,
                const MarkResult &mark);

/// A pit, with its depth gauge's doubt and the thickness gauge's that read the steel beside it; of those that may have been
/// that one (see gauges_beside) the one that makes the doubt widest. The parts of both gauges count for the degrees of freedom.
Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, std::span<const GaugeResult> gauges,
              const PitResult &pit);

} // namespace strakebook::assess
