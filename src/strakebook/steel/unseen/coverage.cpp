#include "strakebook/steel/unseen/coverage.h"

#include <algorithm>

#include <boost/math/constants/constants.hpp>

#include "strakebook/base/approximate.h"
#include "strakebook/base/wide.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::unseen {

namespace {

/// A planned mark with what it gave.
struct Station {
  const survey::Mark *mark = nullptr;
  bool used = false;
};

std::vector<Station> stations_of(const survey::Survey &survey, const assess::Assessment &assessment, const std::string &row) {
  std::vector<Station> out;
  for (const auto &result : assessment.marks)
    if (const auto &mark = survey.marks[result.mark]; mark.row == row) out.push_back({&mark, result.used});
  std::ranges::stable_sort(out, {}, [](const Station &one) { return one.mark->station.value; });
  return out;
}

std::optional<Gap> widest(const std::optional<Gap> &a, const std::optional<Gap> &b) {
  if (!a || !b) return a ? a : b;
  return b->length > a->length ? b : a;
}

/// The ends of the planned row bound a gap as used marks do: beyond them nothing was to be read.
std::optional<Gap> gap_in(const std::vector<Station> &stations) {
  std::optional<Gap> found;
  const survey::Mark *last = nullptr;
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const bool bounds = stations[i].used || i == 0 || i + 1 == stations.size();
    if (!bounds) continue;
    const survey::Mark &here = *stations[i].mark;
    if (last && last->station.value < here.station.value)
      found = widest(found, Gap{here.row, last->id(), here.id(), here.station.value - last->station.value});
    last = &here;
  }
  return found;
}

std::optional<Gap> gap_of(const survey::Survey &survey, const assess::Assessment &assessment, const std::string &zone) {
  std::optional<Gap> found;
  for (const auto &row : survey.rows)
    if (row.zone == zone) found = widest(found, gap_in(stations_of(survey, assessment, row.id)));
  return found;
}

/// Diameters of the crystals at the used marks of a zone; of all where `zone` is empty. nullopt: one is not given.
std::optional<std::vector<Length>> crystals(const survey::Survey &survey, const assess::Assessment &assessment, const std::string &zone) {
  std::vector<Length> out;
  for (const auto &result : assessment.marks) {
    const auto &mark = survey.marks[result.mark];
    if (!result.used || (!zone.empty() && survey::zone_of_row(survey, mark.row).id != zone)) continue;
    const auto *gauge = survey::gauge_of(survey, mark.gauge);
    if (!gauge || !gauge->crystal) return std::nullopt;
    out.push_back(gauge->crystal->value);
  }
  return out;
}

void add_touched(Coverage &to, const survey::Survey &survey, const assess::Assessment &assessment) {
  const auto taken = crystals(survey, assessment, to.zone);
  if (!taken || taken->empty()) return;
  if (std::ranges::all_of(*taken, [&](Length one) { return one == taken->front(); })) to.crystal = taken->front();
  if (!to.area_m2) return;
  double square_metres = 0;
  for (const Length one : *taken) square_metres += boost::math::constants::pi<double>() / 4 * base::in_metres(one) * base::in_metres(one);
  const Ratio area = to.area_m2->ratio();
  to.touched_share = square_metres * static_cast<double>(area.den) / static_cast<double>(area.num);
}

void add_shares(Coverage &to, const survey::Survey &survey, const assess::Assessment &assessment) {
  if (to.area_m2) {
    const Ratio area = to.area_m2->ratio();
    to.used_per_m2 = policy::ratio(policy::lowest(base::Wide{to.count.used} * area.den, area.num));
  }
  add_touched(to, survey, assessment);
}

base::Decimal sum(base::Decimal a, base::Decimal b) {
  const int places = std::max(a.places, b.places);
  const auto scaled = [places](base::Decimal one) {
    return base::narrow(base::Wide{one.digits} * base::power_of_ten(places - one.places));
  };
  return {scaled(a) + scaled(b), places};
}

std::optional<base::Decimal> total_area(const std::vector<Coverage> &zones) {
  base::Decimal total;
  for (const auto &zone : zones) {
    if (!zone.area_m2) return std::nullopt;
    total = sum(total, *zone.area_m2);
  }
  return zones.empty() ? std::nullopt : std::optional(total);
}

} // namespace

std::vector<Coverage> coverage(const survey::Survey &survey, const assess::Assessment &assessment) {
  std::vector<Coverage> out;
  for (std::size_t i = 0; i < survey.zones.size(); ++i) {
    Coverage one{.zone = survey.zones[i].id, .count = assessment.zones[i].count, .area_m2 = survey.zones[i].area_m2};
    one.largest_gap = gap_of(survey, assessment, one.zone);
    add_shares(one, survey, assessment);
    out.push_back(std::move(one));
  }
  return out;
}

Coverage whole(const survey::Survey &survey, const assess::Assessment &assessment, const std::vector<Coverage> &zones) {
  Coverage out{.zone = {}, .count = assessment.coverage, .area_m2 = total_area(zones)};
  for (const auto &zone : zones) out.largest_gap = widest(out.largest_gap, zone.largest_gap);
  add_shares(out, survey, assessment);
  return out;
}

} // namespace strakebook::unseen
