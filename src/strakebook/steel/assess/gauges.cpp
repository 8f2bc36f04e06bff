#include "strakebook/steel/assess/gauges.h"

#include <algorithm>
#include <tuple>

#include "strakebook/steel/assess/budget.h"
#include "strakebook/steel/assess/readings.h"

namespace strakebook::assess {

namespace {

using survey::Gauge;
using survey::Survey;

bool reads_plate(const Survey &survey, const Gauge &gauge) {
  return std::ranges::find(survey.marks, gauge.id, &survey::Mark::gauge) != survey.marks.end();
}

bool may_be_beside(const Survey &survey, const Gauge &gauge, const survey::Pit &pit) {
  const auto beside = gauges_beside(survey, pit);
  return std::ranges::find(beside, gauge.id) != beside.end();
}

/// The greatest figure that the gauge took: at marks, of pits, and, as far as it may have been this gauge, beside pits.
std::optional<Length> thickest_figure(const Survey &survey, const Gauge &gauge) {
  std::optional<Length> thickest;
  const auto see = [&](Length figure) { thickest = thickest ? std::max(*thickest, figure) : figure; };
  for (const survey::Mark &mark : survey.marks)
    if (mark.gauge == gauge.id && mark.status == survey::Status::read)
      for (const base::Measured &repeat : mark.repeats) see(repeat.value);
  for (const survey::Pit &pit : survey.pits) {
    if (pit.gauge == gauge.id) see(pit.depth.value);
    if (may_be_beside(survey, gauge, pit)) see(pit.adjacent.value);
  }
  return thickest;
}

void set_doubt(GaugeResult &result, const Survey &survey, const Gauge &gauge, const policy::DecisionRule &rule) {
  result.thickest = thickest_figure(survey, gauge);
  result.parts = doubt_parts(gauge, result.thickest.value_or(Length{}));
  result.u = combined(result.parts);
  result.degrees = effective_degrees(result.parts);
  result.factor = factor_for(rule, result.degrees);
  result.band_nm = band({.u2 = variance(result.u), .factor = result.factor});
}

BlockCheck block_check(const Gauge &gauge, const std::optional<base::Measured> &shown, Length agreement) {
  if (!gauge.block || !shown) return {};
  const Length off = shown->value - gauge.block->value;
  const bool near = std::max(off, -off) <= agreement;
  return {.state = near ? BlockCheck::State::agrees : BlockCheck::State::differs, .off = off};
}

void set_checks(GaugeResult &result, const Survey &survey, const Gauge &gauge, Length agreement) {
  const auto &inspected = survey.report.inspected;
  result.checked = gauge.block || gauge.before || gauge.after || reads_plate(survey, gauge);
  result.before = block_check(gauge, gauge.before, agreement);
  result.after = block_check(gauge, gauge.after, agreement);
  if (gauge.before && gauge.after) result.drift = gauge.after->value - gauge.before->value;
  result.lapsed = inspected && gauge.certificate_until && gauge.certificate_until->value < inspected->value;
  const auto good = [](const BlockCheck &check) { return check.state == BlockCheck::State::agrees; };
  result.indicative = result.lapsed || (result.checked && !(good(result.before) && good(result.after)));
}

Correction by_check(Correction::By by, const Gauge &gauge, const base::Measured &shown) {
  return {.by = by, .scale = base::ratio_of(gauge.block->value, shown.value), .shift = shown.value - gauge.block->value};
}

Correction by_velocity(const Gauge &gauge, base::Decimal set) {
  const Ratio v = gauge.true_velocity->ratio(), inverse{set.ratio().den, set.ratio().num};
  return {.by = Correction::By::true_velocity, .scale = policy::ratio(policy::fraction(v) * policy::fraction(inverse)), .shift = {}};
}

void set_corrections(GaugeResult &result, const Gauge &gauge) {
  const auto differs = [](const BlockCheck &check) { return check.state == BlockCheck::State::differs; };
  if (differs(result.before) || differs(result.after)) {
    if (gauge.before) result.corrections.push_back(by_check(Correction::By::before, gauge, *gauge.before));
    if (gauge.after) result.corrections.push_back(by_check(Correction::By::after, gauge, *gauge.after));
  }
  const auto set = survey::velocity_set(gauge);
  if (gauge.true_velocity && set) result.corrections.push_back(by_velocity(gauge, *set));
}

void set_worst(GaugeResult &result, const Survey &survey) {
  const survey::Mark *worst = nullptr;
  for (const survey::Mark &mark : survey.marks) {
    if (mark.gauge != result.gauge || mark.status != survey::Status::read || mark.plate != survey::Plate::hull) continue;
    const Length shown = reduced(mark);
    if (worst && std::tie(shown, mark.row, mark.station.value) >= std::tie(result.worst_shown, worst->row, worst->station.value)) continue;
    worst = &mark;
    result.worst = mark.id();
    result.worst_shown = shown;
  }
}

} // namespace

std::vector<std::string> gauges_beside(const Survey &survey, const survey::Pit &pit) {
  const auto those = [&](auto belongs) {
    std::vector<std::string> ids;
    for (const Gauge &gauge : survey.gauges)
      if (std::ranges::any_of(survey.marks, [&](const survey::Mark &mark) { return belongs(gauge, mark); }))
        ids.push_back(gauge.id);
    return ids;
  };
  const auto read_it = [](const Gauge &gauge, const survey::Mark &mark) {
    return mark.status == survey::Status::read && mark.gauge == gauge.id;
  };
  auto ids = those([&](const Gauge &gauge, const survey::Mark &mark) { return read_it(gauge, mark) && mark.row == pit.at.row; });
  if (ids.empty()) ids = those(read_it);
  if (ids.empty())
    for (const Gauge &gauge : survey.gauges) ids.push_back(gauge.id);
  return ids;
}

std::vector<GaugeResult> gauge_results(const Survey &survey, const policy::Policy &policy) {
  std::vector<GaugeResult> results;
  for (const Gauge &gauge : survey.gauges) {
    GaugeResult result{.gauge = gauge.id};
    set_doubt(result, survey, gauge, policy.decision);
    set_checks(result, survey, gauge, policy.block_agreement);
    set_corrections(result, gauge);
    set_worst(result, survey);
    results.push_back(std::move(result));
  }
  return results;
}

} // namespace strakebook::assess
