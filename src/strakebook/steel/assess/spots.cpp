#include "strakebook/steel/assess/spots.h"

#include <algorithm>

#include "strakebook/steel/assess/budget.h"
#include "strakebook/steel/assess/gauges.h"

namespace strakebook::assess {

namespace {

using Gauges = std::span<const GaugeResult>;
constexpr auto by_band = [](const Doubt &a, const Doubt &b) { return band(a) < band(b); };

/// The gauge of this id, or of all the most doubtful; nullptr: there is none.
const GaugeResult *gauge_or_worst(Gauges gauges, std::string_view id) {
  const auto found = std::ranges::find(gauges, id, &GaugeResult::gauge);
  if (found != gauges.end()) return &*found;
  const auto worst = std::ranges::max_element(gauges, {}, &GaugeResult::band_nm);
  return worst == gauges.end() ? nullptr : &*worst;
}

Doubt doubt_of(const GaugeResult *gauge, const policy::DecisionRule &rule) {
  if (!gauge) return {.factor = rule.band};
  return {.u2 = variance(gauge->u), .factor = gauge->factor};
}

Doubt both(const GaugeResult *depth, const GaugeResult &beside, const policy::DecisionRule &rule) {
  if (!depth) return doubt_of(&beside, rule);
  std::vector<DoubtPart> parts = depth->parts;
  parts.insert(parts.end(), beside.parts.begin(), beside.parts.end());
  return {.u2 = policy::sum(variance(depth->u), variance(beside.u)), .factor = factor_for(rule, effective_degrees(parts))};
}

} // namespace

Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const MarkResult &mark) {
  const survey::Mark &read = survey.marks[mark.mark];
  return {.kind = Subject::Kind::plate,
          .id = read.id(),
          .remaining = mark.remaining,
          .low = mark.low,
          .indicative = mark.indicative,
          .doubt = doubt_of(gauge_or_worst(gauges, read.gauge), policy.decision)};
}

Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, Gauges gauges, const PitResult &pit) {
  const survey::Pit &seen = survey.pits[pit.pit];
  const GaugeResult *depth = gauge_or_worst(gauges, seen.gauge);
  Doubt widest = doubt_of(depth, policy.decision);
  for (const std::string &id : gauges_beside(survey, seen))
    if (const auto beside = std::ranges::find(gauges, id, &GaugeResult::gauge); beside != gauges.end())
      widest = std::max(widest, both(depth, *beside, policy.decision), by_band);
  return {.kind = Subject::Kind::pit,
          .id = seen.id,
          .remaining = pit.remaining,
          .low = pit.low,
          .indicative = pit.indicative,
          .doubt = widest};
}

} // namespace strakebook::assess
