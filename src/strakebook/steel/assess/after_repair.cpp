#include "strakebook/steel/assess/after_repair.h"

#include <algorithm>

#include "strakebook/steel/assess/gauges.h"
#include "strakebook/steel/assess/spots.h"
#include "strakebook/steel/survey/closing.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::assess {

namespace {

/// The survey with the item's readings as its last marks, on the day of the addendum: a gauge's doubt may be a share of the
/// thickest plate that it read, and its certificate has to hold on that day.
survey::Survey on_that_day(const survey::Survey &survey, const survey::Addendum &addendum, const survey::ClosedItem &item) {
  survey::Survey after = survey;
  after.report.inspected = addendum.inspected;
  for (const survey::NewReading &read : item.readings)
    after.marks.push_back({.row = read.at.row, .station = read.at.station, .repeats = {read.reading}, .gauge = addendum.gauge});
  return after;
}

bool lays_over(const policy::Policy &policy, const std::string &action) {
  const auto found = policy.actions.find(action);
  return found != policy.actions.end() && found->second.doubler;
}

bool at(const survey::Survey &survey, const survey::Reach &reach, const survey::Place &place) {
  return survey::written(reach) && survey::covers(survey, reach, place.row, place.station.value);
}

/// Where the item's own work reaches the place, that says what plate lies there now; elsewhere the doublers of the survey do.
bool on_doubler(const survey::Survey &survey, const policy::Policy &policy, const std::string &recommendation, const survey::Place &place) {
  for (const survey::SteelworkItem &work : survey.steelwork)
    if (work.recommendation == recommendation && at(survey, work.at, place)) return lays_over(policy, work.action);
  const auto *item = survey::recommendation_of(survey, recommendation);
  if (item != nullptr && at(survey, item->at, place)) return lays_over(policy, item->action);
  return std::ranges::any_of(survey.doublers, [&](const survey::Doubler &doubler) { return at(survey, doubler.over, place); });
}

const Limit *limit_of(const std::vector<Limit> &limits, const ZoneResult &zone) {
  const auto governs = std::ranges::find_if(limits, [](const Limit &limit) { return limit.governs && limit.exact_nm; });
  if (governs != limits.end()) return &*governs;
  const auto measured = std::ranges::find(limits, zone.measured_by, &Limit::criterion);
  return measured == limits.end() ? nullptr : &*measured;
}

Standing standing(const Spot &spot, const Limit &limit) {
  Subject judged = against(spot, {limit});
  return {.result = std::move(judged.results.front()), .band_nm = judged.band_nm};
}

} // namespace

std::vector<NewResult> after_repair(const survey::Survey &survey, const policy::Policy &policy, const Assessment &assessment,
                                    const survey::Addendum &addendum, const survey::ClosedItem &item) {
  const survey::Survey after = on_that_day(survey, addendum, item);
  const std::vector<GaugeResult> gauges = gauge_results(after, policy);
  const auto gauge = std::ranges::find(gauges, addendum.gauge, &GaugeResult::gauge);
  std::vector<NewResult> results;
  for (std::size_t i = 0; i < item.readings.size(); ++i) {
    const survey::NewReading &read = item.readings[i];
    const survey::Zone &zone = survey::zone_of_row(survey, read.at.row);
    NewResult result{.zone = zone.id, .remaining = read.reading.value, .standing = {}};
    result.on_doubler = on_doubler(survey, policy, item.item, read.at);
    result.lapsed = gauge != gauges.end() && gauge->lapsed;
    const auto limits = limits_for(survey, zone, policy, assessment.criteria, assessment.workings);
    const Limit *limit = limit_of(limits, zone_result(assessment, zone.id));
    if (limit != nullptr && !result.on_doubler) {
      const MarkResult as_mark{.mark = survey.marks.size() + i, .used = true, .remaining = result.remaining};
      result.standing = standing(plate_spot(after, policy, gauges, as_mark), *limit);
    }
    results.push_back(std::move(result));
  }
  return results;
}

} // namespace strakebook::assess
