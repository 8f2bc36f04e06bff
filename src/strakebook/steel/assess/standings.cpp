#include "strakebook/steel/assess/standings.h"

#include <algorithm>

#include "strakebook/steel/assess/readings.h"
#include "strakebook/steel/assess/spots.h"

namespace strakebook::assess {

namespace {

std::string measured_by(const ZoneResult &zone) {
  const auto worst = std::ranges::min_element(zone.subjects, {}, &Subject::judged);
  const auto *result = worst == zone.subjects.end() ? nullptr : measured_against(*worst);
  return result == nullptr ? std::string() : result->criterion;
}

Standing standing(const Spot &spot, const Limit &limit) {
  Subject judged = against(spot, {limit});
  return {.result = std::move(judged.results.front()), .band_nm = judged.band_nm};
}

void set_in_zone(Assessment &result, const survey::Survey &survey, const policy::Policy &policy, const ZoneResult &zone) {
  const auto limits = limits_for(survey, *survey::zone_of(survey, zone.zone), policy, result.criteria, result.workings);
  const auto limit = std::ranges::find(limits, zone.measured_by, &Limit::criterion);
  if (limit == limits.end()) return;
  for (const std::size_t i : marks_of_zone(survey, zone.zone))
    if (MarkResult &mark = result.marks[i]; mark.used) mark.standing = standing(plate_spot(survey, policy, result.gauges, mark), *limit);
  for (const std::size_t i : pits_of_zone(survey, zone.zone))
    if (result.pits[i].doubler.empty())
      result.pits[i].standing = standing(pit_spot(survey, policy, result.gauges, result.pits[i]), *limit);
}

} // namespace

const CriterionResult *measured_against(const Subject &subject) {
  const CriterionResult *least = nullptr;
  for (const CriterionResult &result : subject.results) {
    if (result.verdict == Verdict::not_applicable) continue;
    if (result.governs) return &result;
    if (least == nullptr || result.margin < least->margin) least = &result;
  }
  return least;
}

void set_standings(Assessment &result, const survey::Survey &survey, const policy::Policy &policy) {
  for (ZoneResult &zone : result.zones) {
    zone.measured_by = measured_by(zone);
    set_in_zone(result, survey, policy, zone);
  }
}

} // namespace strakebook::assess
