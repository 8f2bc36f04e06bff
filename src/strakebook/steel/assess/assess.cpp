#include <algorithm>
#include <numeric>
#include <stdexcept>

#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/assess/criteria.h"
#include "strakebook/steel/assess/gauges.h"
#include "strakebook/steel/assess/low_side.h"
#include "strakebook/steel/assess/readings.h"
#include "strakebook/steel/assess/retakes.h"
#include "strakebook/steel/assess/standings.h"
#include "strakebook/steel/assess/workings.h"
#include "strakebook/steel/assess/zones.h"

namespace strakebook::assess {

namespace {

/// Sum of the zones' areas; nullopt unless every zone gives one.
std::optional<Fraction> whole_area_m2(const survey::Survey &survey) {
  Fraction sum;
  for (const survey::Zone &zone : survey.zones) {
    if (!zone.area_m2) return std::nullopt;
    sum = sum + policy::fraction(zone.area_m2->ratio());
  }
  return sum.num > 0 ? std::optional(sum) : std::nullopt;
}

void set_coverage(Assessment &result, const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<std::size_t> all(survey.marks.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  result.coverage = tally(survey, result.marks, all).count;
  const auto area = whole_area_m2(survey);
  if (!area) return;
  result.marks_per_m2 = policy::ratio(policy::lowest(policy::product(result.coverage.read, area->den), area->num));
  result.spot_check = *result.marks_per_m2 < policy.spot_check_per_m2.ratio();
}

/// Goes over marks, then pits, in order; the first of equals stays the worst.
template <class See> void each_place(const survey::Survey &survey, const Assessment &result, See see) {
  for (const MarkResult &mark : result.marks)
    if (mark.used) see(survey.marks[mark.mark].id(), mark.judged(), mark.share);
  for (const PitResult &pit : result.pits) see(survey.pits[pit.pit].id, pit.judged(), pit.share);
}

int repeats_apart(const survey::Survey &survey, Length most) {
  return static_cast<int>(std::ranges::count_if(survey.marks, [&](const survey::Mark &mark) {
    return mark.status == survey::Status::read && survey::spread(mark) > most;
  }));
}

void set_worst(Assessment &result, const survey::Survey &survey) {
  std::optional<Ratio> greatest;
  each_place(survey, result, [&](const std::string &id, Length judged, const std::optional<LossShare> &share) {
    if (result.worst.empty() || judged < result.worst_remaining) {
      result.worst = id;
      result.worst_remaining = judged;
    }
    if (share && (!greatest || share->nominal > *greatest)) {
      greatest = share->nominal;
      result.worst_loss = id;
    }
  });
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
  result.rows = row_summaries(survey, result.marks);
  for (const survey::Zone &zone : survey.zones) result.zones.push_back(assess_zone(survey, policy, result, zone));
  set_standings(result, survey, policy);
  set_coverage(result, survey, policy);
  set_worst(result, survey);
  result.repeats_apart = repeats_apart(survey, policy.repeat_spread);
  result.retakes = retakes(result, survey, policy);
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
