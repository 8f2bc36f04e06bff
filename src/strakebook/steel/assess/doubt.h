#pragma once

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/policy/fraction.h"

/// Nearness to a limit against the gauge's own doubt: JCGM 106:2012, acceptance at the limit plus w, w = band * u.
namespace strakebook::assess {

using policy::Wide;
using policy::Fraction;

/// Square of the standard uncertainty u in nm2: of a plate reading its gauge's, under a pit the sum of both gauges'.
using Variance = Wide;
Variance variance(Length u);

/// How far a figure may be off: w = factor * sqrt(u2).
struct Doubt {
  Variance u2 = 0;
  base::Decimal factor; ///< 0: simple acceptance, doubt aside
};

/// u rounded up to the next nanometre: for print.
Length uncertainty(const Doubt &doubt);

/// w rounded up to the next nanometre: for print, never for a verdict.
Length band(const Doubt &doubt);

/// meets: margin >= w; falls short: margin <= -w; between them too close to call. Compared by squares, exactly. With no
/// doubt at all a margin of nought meets.
Verdict judged(Fraction margin_nm, const Doubt &doubt);

/// Where the bare figure stands: nought is at the limit, which is not over it.
Bare bare(Fraction margin_nm);

} // namespace strakebook::assess
