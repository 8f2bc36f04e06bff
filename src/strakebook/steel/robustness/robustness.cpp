#include "strakebook/steel/robustness/robustness.h"

#include <algorithm>
#include <stdexcept>

#include "strakebook/steel/robustness/tries.h"

namespace strakebook::robustness {

namespace {

using What = Moved::What;
using Spots = std::vector<assess::Spot>;

Grid grid_at(const assess::Spot &spot, const Ranges &over, const Used &used) {
  Grid grid{.id = spot.id, .kind = spot.kind};
  for (const Length limit : over.limits)
    for (const auto &doubt : over.doubts) {
      grid.limits.push_back({limit, doubt, try_at(spot, left_of(limit), doubt)});
      grid.limits.back().tried.used = used.limit == limit && doubt.ratio() == as_it_is.ratio();
    }
  for (const Ratio &loss : over.losses)
    for (const Length original : over.originals) {
      grid.losses.push_back({loss, original, try_at(spot, left_of(original, loss), as_it_is)});
      grid.losses.back().tried.used = used.loss == loss && used.original == original;
    }
  return grid;
}

/// Of a zone that is measured by something.
assess::Fraction used_limit(const Used &used) { return used.limit ? left_of(*used.limit) : left_of(*used.original, *used.loss); }

/// Verdicts are listed from the best to the gravest.
Verdict gravest(const Spots &spots, assess::Fraction least_nm, base::Decimal doubt) {
  Verdict found = Verdict::meets;
  for (const auto &spot : spots) found = std::max(found, try_at(spot, least_nm, doubt).result.verdict);
  return found;
}

void move_limit(InZone &zone, const Spots &spots, const Used &used) {
  for (const Length limit : zone.over.limits)
    zone.moved.push_back({.what = What::limit, .length = limit, .loss = {}, .doubt = {},
                          .verdict = gravest(spots, left_of(limit), as_it_is), .used = limit == used.limit});
}

void move_share(InZone &zone, const Spots &spots, const Used &used) {
  for (const Ratio &loss : zone.over.losses)
    zone.moved.push_back({.what = What::loss, .length = {}, .loss = loss, .doubt = {},
                          .verdict = gravest(spots, left_of(*used.original, loss), as_it_is), .used = loss == used.loss});
  for (const Length original : zone.over.originals)
    zone.moved.push_back({.what = What::original, .length = original, .loss = {}, .doubt = {},
                          .verdict = gravest(spots, left_of(original, *used.loss), as_it_is), .used = original == used.original});
}

void move_doubt(InZone &zone, const Spots &spots, assess::Fraction least_nm) {
  for (const auto &doubt : zone.over.doubts)
    zone.moved.push_back({.what = What::doubt, .length = {}, .loss = {}, .doubt = doubt, .verdict = gravest(spots, least_nm, doubt),
                          .used = doubt.ratio() == as_it_is.ratio()});
}

/// What is used, taken at one place and moved one thing at a time.
bool changes_at(const assess::Spot &spot, const std::vector<assess::Fraction> &least_nm, const std::vector<base::Decimal> &doubts) {
  const Verdict first = try_at(spot, least_nm.front(), doubts.front()).result.verdict;
  for (const auto &limit : least_nm)
    for (const auto &doubt : doubts)
      if (try_at(spot, limit, doubt).result.verdict != first) return true;
  return false;
}

/// A verdict turns at most twice over a range, and in one direction, so that trying what the range lists misses no change of it.
Flips flips_of(const Spots &spots, const Ranges &over, const Used &used) {
  const assess::Fraction least_nm = used_limit(used);
  std::vector<assess::Fraction> limits, originals = {least_nm};
  if (used.limit)
    for (const Length limit : over.limits) limits.push_back(left_of(limit));
  else
    for (const Ratio &loss : over.losses) limits.push_back(left_of(*used.original, loss));
  if (used.loss)
    for (const Length original : over.originals) originals.push_back(left_of(original, *used.loss));
  Flips flips;
  for (const auto &spot : spots) {
    flips.limit |= changes_at(spot, limits, {as_it_is});
    flips.original |= changes_at(spot, originals, {as_it_is});
    flips.doubt |= changes_at(spot, {least_nm}, over.doubts);
  }
  return flips;
}

void move_each(InZone &zone, const Spots &spots, const Used &used) {
  const assess::Fraction least_nm = used_limit(used);
  zone.verdict = gravest(spots, least_nm, as_it_is);
  if (used.limit) move_limit(zone, spots, used);
  else move_share(zone, spots, used);
  move_doubt(zone, spots, least_nm);
  zone.flips = flips_of(spots, zone.over, used);
}

InZone try_zone(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
                const survey::Zone &written) {
  const auto &result = assess::zone_result(assessment, written.id);
  const Used used = used_in(written, assessment, result);
  const Spots spots = spots_of(survey, assessment, policy, result);
  InZone zone{.zone = written.id, .criterion = result.measured_by, .over = ranges_for(written, policy, result, used)};
  for (const auto &spot : spots) zone.grids.push_back(grid_at(spot, zone.over, used));
  if (!zone.criterion.empty()) move_each(zone, spots, used);
  return zone;
}

} // namespace

Robustness robustness(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  Robustness found;
  for (const auto &zone : survey.zones) found.zones.push_back(try_zone(survey, assessment, policy, zone));
  return found;
}

const InZone &in_zone(const Robustness &found, std::string_view zone) {
  const auto at = std::ranges::find(found.zones, zone, &InZone::zone);
  if (at == found.zones.end()) throw std::out_of_range("no such zone: " + std::string(zone));
  return *at;
}

} // namespace strakebook::robustness
