#pragma once

#include "strakebook/steel/policy/exact.h"

/// Litres, masses and counts are exact: a product of seven decimals does not fit into 128 bits.
namespace strakebook::protection {

using policy::Exact;
using policy::exact;

inline Exact share(const base::Decimal &percent) { return exact(percent) / 100; }
inline double rounded(const Exact &value) { return value.convert_to<double>(); }
inline double rounded(const base::Decimal &value) { return rounded(exact(value)); }

} // namespace strakebook::protection
