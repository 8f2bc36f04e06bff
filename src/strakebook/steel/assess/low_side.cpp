#include "strakebook/steel/assess/low_side.h"

#include <algorithm>

#include "strakebook/steel/assess/gauges.h"
#include "strakebook/steel/assess/originals.h"

namespace strakebook::assess {

namespace {

bool single_echo(const survey::Mark &mark) { return mark.surface == survey::Surface::coated_single_echo; }

/// Less than what is displayed, and never less than nothing.
std::optional<Length> where_less(Length low, Length remaining) {
  return low < remaining ? std::optional(std::max(low, Length{})) : std::nullopt;
}

void set_mark(MarkResult &result, const Assessment &all, const survey::Survey &survey, const policy::Policy &policy) {
  const survey::Mark &mark = survey.marks[result.mark];
  const GaugeResult *gauge = gauge_result(all, mark.gauge);
  result.over_read = over_read(mark, policy.single_echo);
  result.indicative = (gauge && gauge->indicative) || open_single_echo(mark);
  const Length figure = gauge ? low_side(result.remaining, *gauge) : result.remaining;
  result.low = where_less(result.over_read ? figure - result.over_read->most : figure, result.remaining);
  if (!result.low) return;
  const survey::Zone &zone = survey::zone_of_row(survey, mark.row);
  result.loss = zone.original.nominal.value - *result.low;
  result.share = loss_share(zone, policy, {result.low->nm(), 1});
}

void set_pit(PitResult &result, const Assessment &all, const survey::Survey &survey, const policy::Policy &policy) {
  if (!result.doubler.empty()) return; // judged by nothing
  const survey::Pit &pit = survey.pits[result.pit];
  const GaugeResult *depth_gauge = gauge_result(all, pit.gauge);
  const Length depth = depth_gauge ? high_side(pit.depth.value, *depth_gauge) : pit.depth.value;
  Length adjacent = pit.adjacent.value;
  result.indicative = depth_gauge && depth_gauge->indicative;
  for (const std::string &id : gauges_beside(survey, pit)) {
    const GaugeResult &beside = *gauge_result(all, id);
    adjacent = std::min(adjacent, low_side(pit.adjacent.value, beside));
    result.indicative = result.indicative || beside.indicative;
  }
  result.low = where_less(adjacent - depth, result.remaining);
  if (!result.low) return;
  const survey::Zone &zone = survey::zone_of_row(survey, pit.at.row);
  result.loss = zone.original.nominal.value - *result.low;
  result.share = loss_share(zone, policy, {result.low->nm(), 1});
}

} // namespace

Length velocity_type(Length shown, const Correction &correction) {
  return Length::nanometres(base::narrow(policy::product(shown.nm(), correction.scale.num) / correction.scale.den));
}

std::optional<Length> zero_type(Length shown, const Correction &correction) {
  return correction.shift ? std::optional(shown - *correction.shift) : std::nullopt;
}

Length low_side(Length shown, const GaugeResult &gauge) {
  Length least = shown;
  for (const Correction &correction : gauge.corrections)
    least = std::min({least, velocity_type(shown, correction), zero_type(shown, correction).value_or(shown)});
  return least;
}

Length high_side(Length shown, const GaugeResult &gauge) {
  Length greatest = shown;
  for (const Correction &correction : gauge.corrections)
    greatest = std::max({greatest, base::scaled_up(shown, correction.scale), zero_type(shown, correction).value_or(shown)});
  return greatest;
}

std::optional<OverRead> over_read(const survey::Mark &mark, const policy::SingleEcho &factor) {
  if (!single_echo(mark) || !mark.coating) return std::nullopt;
  return OverRead{base::scaled_up(mark.coating->value, factor.least.ratio()),
                  base::scaled_up(mark.coating->value, factor.most.ratio())};
}

bool open_single_echo(const survey::Mark &mark) { return single_echo(mark) && !mark.coating; }

void set_low_sides(Assessment &result, const survey::Survey &survey, const policy::Policy &policy) {
  for (MarkResult &mark : result.marks)
    if (mark.used) set_mark(mark, result, survey, policy);
  for (PitResult &pit : result.pits) set_pit(pit, result, survey, policy);
}

} // namespace strakebook::assess
