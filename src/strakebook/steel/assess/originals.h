#pragma once

#include "strakebook/steel/assess/assessment.h"

/// The original thickness of a zone: what a loss is counted from.
namespace strakebook::assess {

/// Delivered thickness of a nominal under a tolerance.
struct Interval {
  Length lower, upper;
};

/// A basis that the policy calls weak, or does not know.
bool weak_basis(const survey::Zone &zone, const policy::Policy &policy);

/// Ids of the tolerances that are considered: the ones the zone names; on a weak basis that names none, the policy's usual ones.
std::vector<std::string> tolerances_of(const survey::Zone &zone, const policy::Policy &policy);

/// Interval of `nominal` from the least lower to the greatest upper bound of the tolerances considered; nullopt: none is, or
/// none of their tables reaches the nominal.
std::optional<Interval> delivery(const survey::Zone &zone, const policy::Policy &policy, Length nominal);

/// The original is what somebody told.
bool told(const survey::Original &original);

/// (original - remaining) / original; `remaining_nm` in nanometres, need not be whole.
Ratio share_lost(Length original, Ratio remaining_nm);

/// Loss of a place as a share of the zone's original: at the nominal, at the thinnest and at the thickest delivery. nullopt
/// with a weak basis.
std::optional<LossShare> loss_share(const survey::Zone &zone, const policy::Policy &policy, Ratio remaining_nm);

/// The sizes considered for a weak basis, ascending. `thickest`: the thickest reading used in the zone. A size that no
/// tolerance of the zone reaches is held against the policy's usual ones.
std::vector<Nominal> nominals(const survey::Zone &zone, const policy::Policy &policy, std::optional<Length> thickest);

/// The highest original that can be held: the nominal of a strong basis, else the thickest nominal alive, and where none
/// is, the greater of the stated nominal and the thickest reading.
Length highest_original(const survey::Zone &zone, const std::vector<Nominal> &considered, bool weak,
                        std::optional<Length> thickest);

/// Shares lost over the nominals alive, at nominal: least and greatest.
struct ShareRange {
  std::optional<Ratio> low, high;
};
ShareRange over_alive(const std::vector<Nominal> &considered, Ratio remaining_nm);

} // namespace strakebook::assess
