#pragma once

#include "strakebook/base/date.h"
#include "strakebook/base/ratio.h"

/// Time between surveys.
namespace strakebook::years {

/// Years from one day to another that is not before it: whole anniversaries, then the days over as a share of the days of the
/// year that they lie in. The anniversary of 29 February is 28 February where there is none. Exact.
base::Ratio years_between(base::Date from, base::Date to);

/// The day on which so many years (0 or more) are over, counted in the same way: whole years, then a share of the days of the year
/// after, rounded down to a day. A double: a life is one.
base::Date years_later(base::Date day, double years);

} // namespace strakebook::years
