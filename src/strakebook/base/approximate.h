#pragma once

#include "strakebook/base/decimal.h"
#include "strakebook/base/length.h"
#include "strakebook/base/ratio.h"

/// Exact figures as the nearest doubles, for statistics, quantities and drawings: no verdict turns on what is made of them.
namespace strakebook::base {

inline double approximate(Ratio exact) { return static_cast<double>(exact.num) / static_cast<double>(exact.den); }
inline double approximate(const Decimal &exact) { return approximate(exact.ratio()); }
inline double in_millimetres(Length length) { return approximate(Ratio{length.nm(), 1'000'000}); }
inline double in_metres(Length length) { return approximate(Ratio{length.nm(), 1'000'000'000}); }

} // namespace strakebook::base
