#pragma once

#include "strakebook/steel/assess/criteria.h"

/// Places of the hull as they are judged: what is left there, and how far that figure may be off.
namespace strakebook::assess {

/// A mark that is used, with its gauge's doubt. A gauge that the survey does not list counts as the most doubtful one it does.
Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, const MarkResult &mark);

/// A pit, with its depth gauge's doubt and the thickness gauge's that read the steel beside it. The file does not say which
/// that was, so it is the most doubtful gauge used at a mark of the pit's row; where none is, of all.
Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, const PitResult &pit);

} // namespace strakebook::assess
