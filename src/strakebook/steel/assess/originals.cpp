#include "strakebook/steel/assess/originals.h"

#include <algorithm>

#include "strakebook/base/in_order.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::assess {

namespace {

using State = Nominal::State;

bool alive(const Nominal &nominal) { return nominal.state == State::alive; }

State state_under(const Interval &interval, Length thickest, bool assumed_unwasted) {
  if (thickest > interval.upper) return State::excluded;
  return thickest < interval.lower && assumed_unwasted ? State::set_aside : State::alive;
}

/// A reading alone excludes a size only if it does so under every tolerance.
State over_all(const std::vector<Nominal::Fit> &fits) {
  const auto any = [&](State state) { return std::ranges::find(fits, state, &Nominal::Fit::state) != fits.end(); };
  if (fits.empty() || any(State::alive)) return State::alive;
  return any(State::set_aside) ? State::set_aside : State::excluded;
}

std::optional<Interval> delivered(const policy::Policy &policy, const std::string &tolerance, Length nominal) {
  const auto found = policy.tolerances.find(tolerance);
  if (found == policy.tolerances.end()) return std::nullopt;
  const auto *band = policy::band_for(found->second, nominal);
  if (!band) return std::nullopt;
  return Interval{nominal + band->lower, nominal + band->upper};
}

std::vector<Nominal::Fit> fits_of(const policy::Policy &policy, const std::vector<std::string> &tolerances, Length size) {
  std::vector<Nominal::Fit> fits;
  for (const std::string &id : tolerances)
    if (const auto interval = delivered(policy, id, size)) fits.push_back({id, interval->lower, interval->upper, State::alive});
  return fits;
}

Nominal considered(const survey::Zone &zone, const policy::Policy &policy, Length size, std::optional<Length> thickest) {
  Nominal result{.nominal = size, .fits = fits_of(policy, tolerances_of(zone, policy), size)};
  if (result.fits.empty()) result.fits = fits_of(policy, policy.usual_tolerances, size);
  for (Nominal::Fit &fit : result.fits) {
    if (thickest) fit.state = state_under({fit.lower, fit.upper}, *thickest, zone.original.assumption.given());
    result.lower = std::min(result.lower.value_or(fit.lower), fit.lower);
    result.upper = std::max(result.upper.value_or(fit.upper), fit.upper);
  }
  result.state = over_all(result.fits);
  return result;
}

} // namespace

Ratio share_lost(Length original, Ratio remaining_nm) {
  const policy::Fraction left = policy::fraction(remaining_nm) * policy::Fraction{1, original.nm()};
  return policy::ratio(policy::Fraction{1, 1} + policy::Fraction{-left.num, left.den});
}

bool told(const survey::Original &original) {
  const auto from = survey::provenance_of(original.source.text);
  return from && from->origin == base::Origin::told;
}

bool weak_basis(const survey::Zone &zone, const policy::Policy &policy) {
  const auto basis = policy.bases.find(zone.original.basis);
  return basis == policy.bases.end() || basis->second.weak;
}

std::vector<std::string> tolerances_of(const survey::Zone &zone, const policy::Policy &policy) {
  const auto &named = zone.original.tolerances;
  return named.empty() && weak_basis(zone, policy) ? policy.usual_tolerances : named;
}

std::optional<Interval> delivery(const survey::Zone &zone, const policy::Policy &policy, Length nominal) {
  const auto fits = fits_of(policy, tolerances_of(zone, policy), nominal);
  if (fits.empty()) return std::nullopt;
  return Interval{std::ranges::min(fits, {}, &Nominal::Fit::lower).lower, std::ranges::max(fits, {}, &Nominal::Fit::upper).upper};
}

std::optional<LossShare> loss_share(const survey::Zone &zone, const policy::Policy &policy, Ratio remaining_nm) {
  const Length nominal = zone.original.nominal.value;
  if (weak_basis(zone, policy)) return std::nullopt;
  LossShare share{.nominal = share_lost(nominal, remaining_nm), .low = {}, .high = {}};
  if (const auto interval = delivery(zone, policy, nominal)) {
    share.low = share_lost(interval->lower, remaining_nm);
    share.high = share_lost(interval->upper, remaining_nm);
  }
  return share;
}

std::vector<Nominal> nominals(const survey::Zone &zone, const policy::Policy &policy, std::optional<Length> thickest) {
  std::vector<Length> sizes = policy.usual_nominals;
  sizes.push_back(zone.original.nominal.value);
  base::put_in_order(sizes);
  std::vector<Nominal> result;
  for (const Length size : sizes) result.push_back(considered(zone, policy, size, thickest));
  return result;
}

Length highest_original(const survey::Zone &zone, const std::vector<Nominal> &considered, bool weak,
                        std::optional<Length> thickest) {
  const Length stated = zone.original.nominal.value;
  if (!weak) return stated;
  const auto highest = std::find_if(considered.rbegin(), considered.rend(), alive);
  return highest != considered.rend() ? highest->nominal : std::max(stated, thickest.value_or(stated));
}

ShareRange over_alive(const std::vector<Nominal> &considered, Ratio remaining_nm) {
  ShareRange range;
  for (const Nominal &nominal : considered) {
    if (!alive(nominal)) continue;
    const Ratio share = share_lost(nominal.nominal, remaining_nm);
    if (!range.low || share < *range.low) range.low = share;
    if (!range.high || share > *range.high) range.high = share;
  }
  return range;
}

} // namespace strakebook::assess
