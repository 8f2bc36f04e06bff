#pragma once

#include "strakebook/steel/assess/assessment.h"

/// The original thickness of a zone: what a loss is counted from.
namespace strakebook::assess {

/// Delivered thickness of a nominal under a tolerance.
struct Interval {
  Length lower, upper;
};

/// Interval of `nominal` under the zone's named tolerance; nullopt: none named, or its table does not reach the nominal.
std::optional<Interval> delivery(const survey::Zone &zone, const policy::Policy &policy, Length nominal);

/// A basis that the policy calls weak, or does not know.
bool weak_basis(const survey::Zone &zone, const policy::Policy &policy);

/// Loss of a place as a share of the zone's original: at the nominal, at the thinnest and at the thickest delivery. nullopt
/// with a weak basis.
std::optional<LossShare> loss_share(const survey::Zone &zone, const policy::Policy &policy, Length remaining);

/// The sizes considered for a weak basis, ascending. `thickest`: the thickest reading used in the zone.
std::vector<Nominal> nominals(const survey::Zone &zone, const policy::Policy &policy, std::optional<Length> thickest);

/// The highest original that can be held: the nominal of a strong basis, else the thickest nominal alive, and where none
/// is, the greater of the stated nominal and the thickest reading.
Length highest_original(const survey::Zone &zone, const std::vector<Nominal> &considered, bool weak,
                        std::optional<Length> thickest);

/// Shares lost at `remaining` over the nominals alive, at nominal: least and greatest.
struct ShareRange {
  std::optional<Ratio> low, high;
};
ShareRange over_alive(const std::vector<Nominal> &considered, Length remaining);

} // namespace strakebook::assess
