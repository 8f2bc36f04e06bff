#pragma once

#include <optional>
#include <string>

#include "strakebook/steel/assess/doubt.h"

namespace strakebook::assess {

/// Probability that the steel is not under its limit, where the figure's error is normal with the standard uncertainty sqrt(u2):
/// Phi(margin / u), JCGM 106:2012 clause 7 with one lower limit. It counts what Doubt counts and nothing else, so it is a figure
/// for print and decides no verdict. nullopt without doubt: there is nothing to spread.
std::optional<double> conformance(Fraction margin_nm, Variance u2);

/// With six decimals, rounded, and never on to 0 or 1: "0.991802", "0.999999".
std::string conformance_text(double probability);

} // namespace strakebook::assess
