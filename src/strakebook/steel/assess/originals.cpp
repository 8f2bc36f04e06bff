#include "strakebook/steel/assess/originals.h"

#include <algorithm>

#include "strakebook/steel/policy/fraction.h"

namespace strakebook::assess {

namespace {

Ratio share_lost(Length original, Length remaining) {
  return base::reduced(base::ratio_of(original - remaining, original));
}

bool alive(const Nominal &nominal) { return nominal.state == Nominal::State::alive; }

Nominal considered(const survey::Zone &zone, const policy::Policy &policy, Length size, std::optional<Length> thickest) {
  Nominal result{.nominal = size};
  const auto interval = delivery(zone, policy, size);
  if (!interval) return result;
  result.lower = interval->lower;
  result.upper = interval->upper;
  if (!thickest) return result;
  if (*thickest > interval->upper) result.state = Nominal::State::excluded;
  else if (*thickest < interval->lower && zone.original.assumption.given()) result.state = Nominal::State::set_aside;
  return result;
}

} // namespace

std::optional<Interval> delivery(const survey::Zone &zone, const policy::Policy &policy, Length nominal) {
  const auto tolerance = policy.tolerances.find(zone.original.tolerance);
  if (tolerance == policy.tolerances.end()) return std::nullopt;
  const auto *band = policy::band_for(tolerance->second, nominal);
  if (!band) return std::nullopt;
  return Interval{nominal + band->lower, nominal + band->upper};
}

bool weak_basis(const survey::Zone &zone, const policy::Policy &policy) {
  const auto basis = policy.bases.find(zone.original.basis);
  return basis == policy.bases.end() || basis->second.weak;
}

std::optional<LossShare> loss_share(const survey::Zone &zone, const policy::Policy &policy, Length remaining) {
  const Length nominal = zone.original.nominal.value;
  if (weak_basis(zone, policy)) return std::nullopt;
  LossShare share{.nominal = share_lost(nominal, remaining), .low = {}, .high = {}};
  if (const auto interval = delivery(zone, policy, nominal)) {
    share.low = share_lost(interval->lower, remaining);
    share.high = share_lost(interval->upper, remaining);
  }
  return share;
}

std::vector<Nominal> nominals(const survey::Zone &zone, const policy::Policy &policy, std::optional<Length> thickest) {
  std::vector<Length> sizes = policy.usual_nominals;
  sizes.push_back(zone.original.nominal.value);
  std::ranges::sort(sizes);
  const auto repeated = std::ranges::unique(sizes);
  sizes.erase(repeated.begin(), repeated.end());
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

ShareRange over_alive(const std::vector<Nominal> &considered, Length remaining) {
  ShareRange range;
  for (const Nominal &nominal : considered) {
    if (!alive(nominal)) continue;
    const Ratio share = share_lost(nominal.nominal, remaining);
    if (!range.low || share < *range.low) range.low = share;
    if (!range.high || share > *range.high) range.high = share;
  }
  return range;
}

} // namespace strakebook::assess
