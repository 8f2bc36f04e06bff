#include "strakebook/steel/assess/spots.h"

#include <algorithm>

namespace strakebook::assess {

namespace {

template <class Counts> std::optional<Length> greatest_doubt(const survey::Survey &survey, Counts counts) {
  std::optional<Length> greatest;
  for (const survey::Gauge &gauge : survey.gauges)
    if (counts(gauge) && (!greatest || gauge.u > *greatest)) greatest = gauge.u;
  return greatest;
}

Length greatest_of_all(const survey::Survey &survey) {
  return greatest_doubt(survey, [](const survey::Gauge &) { return true; }).value_or(Length{});
}

Length doubt_of(const survey::Survey &survey, std::string_view gauge) {
  const survey::Gauge *found = survey::gauge_of(survey, gauge);
  return found ? found->u : greatest_of_all(survey);
}

Length doubt_beside(const survey::Survey &survey, const survey::Pit &pit) {
  const auto on_row = greatest_doubt(survey, [&](const survey::Gauge &gauge) {
    return std::ranges::any_of(survey.marks, [&](const survey::Mark &mark) {
      return mark.row == pit.at.row && mark.status == survey::Status::read && mark.gauge == gauge.id;
    });
  });
  return on_row ? *on_row : greatest_of_all(survey);
}

} // namespace

Spot plate_spot(const survey::Survey &survey, const policy::Policy &policy, const MarkResult &mark) {
  const survey::Mark &read = survey.marks[mark.mark];
  return {.kind = Subject::Kind::plate,
          .id = read.id(),
          .remaining = mark.remaining,
          .doubt = {.u2 = variance(doubt_of(survey, read.gauge)), .factor = policy.decision.band}};
}

Spot pit_spot(const survey::Survey &survey, const policy::Policy &policy, const PitResult &pit) {
  const survey::Pit &seen = survey.pits[pit.pit];
  const Variance depth = variance(doubt_of(survey, seen.gauge)), beside = variance(doubt_beside(survey, seen));
  return {.kind = Subject::Kind::pit,
          .id = seen.id,
          .remaining = pit.remaining,
          .doubt = {.u2 = policy::sum(depth, beside), .factor = policy.decision.band}};
}

} // namespace strakebook::assess
