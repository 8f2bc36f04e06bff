#include "strakebook/steel/assess/spots.h"

#include <algorithm>
#include <tuple>

#include "strakebook/steel/assess/budget.h"
#include "strakebook/steel/assess/gauges.h"

namespace strakebook::assess {

namespace {

/// The gauge with the greatest doubt of those that count, of equals the first by name; nullptr: none counts.
template <class Counts> const GaugeResult *most_doubtful(Gauges gauges, Counts counts) {
  const GaugeResult *worst = nullptr;
  for (const GaugeResult &gauge : gauges)
    if (counts(gauge) && (!worst || std::tie(worst->band_nm, gauge.gauge) < std::tie(gauge.band_nm, worst->gauge))) worst = &gauge;
  return worst;
}

const GaugeResult *named_or_worst(Gauges gauges, std::string_view name) {
  const auto found = std::ranges::find(gauges, name, &GaugeResult::gauge);
  return found != gauges.end() ? &*found : most_doubtful(gauges, [](const GaugeResult &) { return true; });
}

Doubt doubt_of(const GaugeResult *gauge, const policy::DecisionRule &rule) {
  if (!gauge) return {.factor = rule.band};
  return {.u2 = variance(gauge->u), .factor = gauge->factor};
}

Doubt both(const GaugeResult *depth, const GaugeResult *beside, const policy::DecisionRule &rule) {
  if (!depth || !beside) return doubt_of(depth ? depth : beside, rule);
  std::vector<DoubtPart> parts = depth->parts;
  parts.insert(parts.end(), beside->parts.begin(), beside->parts.end());
  return {.u2 = policy::sum(variance(depth->u), variance(beside->u)), .factor = factor_for(rule, effective_degrees(parts))};
}

} // namespace

const GaugeResult *depth_gauge(Gauges gauges, const survey::Pit &pit) { return named_or_worst(gauges, pit.gauge); }

GaugeBeside gauge_beside(const survey::Survey &survey, Gauges gauges, const survey::Pit &pit) {
  const auto beside = gauges_beside(survey, pit);
  const auto may_be = [&](const GaugeResult &gauge) { return std::ranges::find(beside, gauge.gauge) != beside.end(); };
  return {.gauge = most_doubtful(gauges, may_be), .chosen = beside.size() > 1};
}

Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const MarkResult &mark) {
  const survey::Mark &read = survey.marks[mark.mark];
  return {.kind = Subject::Kind::plate,
          .id = read.id(),
          .remaining = mark.remaining,
          .low = mark.low,
          .indicative = mark.indicative,
          .doubt = doubt_of(named_or_worst(gauges, read.gauge), policy.decision)};
}

Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const PitResult &pit) {
  const survey::Pit &seen = survey.pits[pit.pit];
  return {.kind = Subject::Kind::pit,
          .id = seen.id,
          .remaining = pit.remaining,
          .low = pit.low,
          .indicative = pit.indicative,
          .doubt = both(depth_gauge(gauges, seen), gauge_beside(survey, gauges, seen).gauge, policy.decision)};
}

} // namespace strakebook::assess
