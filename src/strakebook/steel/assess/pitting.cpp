#include "strakebook/steel/assess/pitting.h"

#include <algorithm>

#include "strakebook/steel/policy/fraction.h"
#include "strakebook/steel/survey/pitting.h"

namespace strakebook::assess {

namespace {

using policy::Fraction;
using policy::fraction;

Fraction quotient(Fraction a, Fraction b) { return a * policy::lowest(b.den, b.num); } // b > 0

std::optional<Length> least_spacing(const survey::Survey &survey, const survey::Zone &zone) {
  auto spacing = survey::spacing_of_pits(survey, zone.id);
  if (!zone.pitting || !zone.pitting->spacing) return spacing;
  const Length declared = zone.pitting->spacing->value;
  return std::min(spacing.value_or(declared), declared);
}

/// Penetration from the original surface.
Fraction lost(const survey::Zone &zone, Ratio remaining_nm) {
  const Fraction left = fraction(remaining_nm);
  return Fraction{zone.original.nominal.value.nm(), 1} + Fraction{-left.num, left.den};
}

void set_factor(Pitting &pitting, const survey::Zone &zone, const ZoneResult &tallied) {
  if (!tallied.under_pit) pitting.no_factor = "no-pits";
  else if (tallied.weak_basis) pitting.no_factor = "weak-basis";
  else if (!tallied.general || lost(zone, tallied.general->remaining_nm).num <= 0) pitting.no_factor = "no-mean-loss";
  else
    pitting.factor = policy::ratio(quotient(lost(zone, tallied.under_pit->remaining_nm), lost(zone, tallied.general->remaining_nm)));
}

} // namespace

Extent pitting_extent(const survey::Zone &zone, bool has_pits, std::optional<Length> spacing, const policy::ExtentRule &rule) {
  if (!zone.pitting || zone.pitting->count.digits == 0) return has_pits ? Extent::not_declared : Extent::none;
  const survey::PittingExtent &declared = *zone.pitting;
  if (declared.share_percent.ratio() >= rule.extensive_from_percent.ratio()) return Extent::extensive;
  const Fraction per_m2 = quotient(fraction(declared.count.ratio()), fraction(declared.area_m2.ratio()));
  const bool few = policy::ratio(per_m2) <= rule.most_per_m2.ratio();
  const bool little = declared.share_percent.ratio() < rule.under_percent.ratio();
  const bool apart = !spacing || *spacing >= rule.least_spacing;
  return few && little && apart ? Extent::isolated : Extent::scattered;
}

Pitting pitting_of(const survey::Survey &survey, const policy::Policy &policy, const survey::Zone &zone, const ZoneResult &tallied) {
  Pitting pitting{.measured = static_cast<int>(survey::pits_of(survey, zone.id).size()),
                  .spacing = least_spacing(survey, zone),
                  .intensity_percent = survey::pitting_intensity(survey, zone),
                  .few_measured = survey::too_few_pits_measured(survey, zone, policy.pitting)};
  if (zone.pitting)
    pitting.per_m2 = policy::ratio(quotient(fraction(zone.pitting->count.ratio()), fraction(zone.pitting->area_m2.ratio())));
  set_factor(pitting, zone, tallied);
  return pitting;
}

} // namespace strakebook::assess
