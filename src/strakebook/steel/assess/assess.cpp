#include <algorithm>
#include <numeric>
#include <stdexcept>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/assess/criteria.h"
#include "strakebook/steel/assess/defaults.h"
#include "strakebook/steel/assess/gauges.h"
#include "strakebook/steel/assess/low_side.h"
#include "strakebook/steel/assess/readings.h"
#include "strakebook/steel/assess/retakes.h"
#include "strakebook/steel/assess/standings.h"
#include "strakebook/steel/assess/workings.h"
#include "strakebook/steel/assess/zones.h"

namespace strakebook::assess {

namespace {

/// Sum of the areas of the zones that `counts`; nullopt unless every zone gives one.
template <class Counts> std::optional<Fraction> area_m2(const survey::Survey &survey, Counts counts) {
  Fraction sum, all;
  for (const survey::Zone &zone : survey.zones) {
    if (!zone.area_m2) return std::nullopt;
    const Fraction area = policy::fraction(zone.area_m2->ratio());
    all = all + area;
    if (counts(zone.id)) sum = sum + area;
  }
  return all.num > 0 ? std::optional(sum) : std::nullopt;
}

void set_coverage(Assessment &result, const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<std::size_t> all(survey.marks.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  result.coverage = tally(survey, policy, result.gauges, result.marks, all).count;
  const auto area = area_m2(survey, [](std::string_view) { return true; });
  if (!area) return;
  const auto read = area_m2(survey, [&](std::string_view zone) { return zone_result(result, zone).count.used > 0; });
  result.shell_m2 = policy::ratio(*area);
  result.read_m2 = policy::ratio(*read);
  result.marks_per_m2 = policy::ratio(policy::lowest(policy::product(result.coverage.read, area->den), area->num));
  result.spot_check = *result.marks_per_m2 < policy.spot_check_per_m2.ratio();
}

int repeats_apart(const survey::Survey &survey, Length most) {
  return static_cast<int>(std::ranges::count_if(survey.marks, [&](const survey::Mark &mark) {
    return mark.status == survey::Status::read && survey::spread(mark) > most;
  }));
}

/// The zones' own worst places, lowest plate first; of equals the one of the zone whose id comes first stays the worst.
void set_worst(Assessment &result) {
  std::vector<const ZoneResult *> zones;
  for (const ZoneResult &zone : result.zones) zones.push_back(&zone);
  std::ranges::sort(zones, {}, &ZoneResult::zone);
  std::optional<Ratio> greatest;
  for (const ZoneResult *zone : zones)
    for (const Subject &place : zone->subjects) {
      const auto &wastage = place.kind == Subject::Kind::pit ? zone->under_pit : zone->local;
      if (result.worst.empty() || place.judged() < result.worst_remaining) {
        result.worst = place.id;
        result.worst_remaining = place.judged();
      }
      if (wastage && wastage->share && (!greatest || wastage->share->nominal > *greatest)) {
        greatest = wastage->share->nominal;
        result.worst_loss = place.id;
      }
    }
}

} // namespace

Assessment assess(const survey::Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  Assessment result;
  result.decision = policy.decision;
  result.criteria = criteria_in_use(survey, policy);
  result.statistics = policy.statistics;
  result.workings = rule_workings(survey, result.criteria, sink);
  result.gauges = gauge_results(survey, policy);
  result.marks = mark_results(survey, policy);
  result.pits = pit_results(survey, policy);
  set_low_sides(result, survey, policy);
  result.rows = row_summaries(survey, policy, result.gauges, result.marks);
  for (const survey::Zone &zone : survey.zones) result.zones.push_back(assess_zone(survey, policy, result, zone));
  set_standings(result, survey, policy);
  set_coverage(result, survey, policy);
  set_worst(result);
  result.repeats_apart = repeats_apart(survey, policy.repeat_spread);
  result.retakes = retakes(result, survey, policy);
  result.defaults = defaults_used(survey, result);
  return result;
}

const GaugeResult *gauge_result(const Assessment &assessment, std::string_view gauge) {
  const auto found = std::ranges::find(assessment.gauges, gauge, &GaugeResult::gauge);
  return found == assessment.gauges.end() ? nullptr : &*found;
}

const ZoneResult &zone_result(const Assessment &assessment, std::string_view zone) {
  const auto found = std::ranges::find(assessment.zones, zone, &ZoneResult::zone);
  if (found == assessment.zones.end()) throw std::out_of_range("no such zone: " + std::string(zone));
  return *found;
}

} // namespace strakebook::assess
