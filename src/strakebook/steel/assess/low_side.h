#pragma once

#include "strakebook/steel/assess/assessment.h"

/// What a displayed figure may stand for where its gauge is off: each kind of error gives its own estimate, none is applied,
/// and a place is judged on the low side.
namespace strakebook::assess {

/// The figure as it would be were the velocity wrong: scaled, rounded down to a nanometre.
Length velocity_type(Length shown, const Correction &correction);
/// The figure as it would be were the zero wrong; nullopt for a true velocity, which says nothing of the zero.
std::optional<Length> zero_type(Length shown, const Correction &correction);

/// The least of the figure displayed and its estimates: of a thickness. An estimate that makes it larger does not count.
Length low_side(Length shown, const GaugeResult &gauge);
/// The greatest of them, rounded up to a nanometre: of a depth, which takes steel away.
Length high_side(Length shown, const GaugeResult &gauge);

/// What a single echo shows too much for the film that it was read through; nullopt: no single echo, or no film is given.
std::optional<OverRead> over_read(const survey::Mark &mark, const policy::SingleEcho &factor);
/// Read single echo, and nothing says through how much: the over-read cannot be estimated.
bool open_single_echo(const survey::Mark &mark);

/// Sets `low` and `indicative` of every used mark and of every pit, and with them loss and share, which are of the low side.
/// Needs the gauges.
void set_low_sides(Assessment &result, const survey::Survey &survey, const policy::Policy &policy);

} // namespace strakebook::assess
