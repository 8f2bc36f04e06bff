#include "strakebook/steel/robustness/tries.h"

#include <algorithm>
#include <stdexcept>

#include "strakebook/base/in_order.h"
#include "strakebook/base/wide.h"
#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/assess/spots.h"

namespace strakebook::robustness {

namespace {

using assess::Fraction;
using assess::Spot;

Spot spot_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
             const assess::Subject &subject) {
  if (subject.kind == assess::Subject::Kind::pit) {
    for (const auto &pit : assessment.pits)
      if (survey.pits[pit.pit].id == subject.id) return assess::pit_spot(survey, policy, assessment.gauges, pit);
  } else {
    for (const auto &mark : assessment.marks)
      if (survey.marks[mark.mark].id() == subject.id) return assess::plate_spot(survey, policy, assessment.gauges, mark);
  }
  throw std::logic_error("a subject that is no place of the survey: " + subject.id);
}

std::vector<Length> originals_of(const survey::Zone &zone, const policy::Policy &policy, const assess::ZoneResult &result) {
  std::vector<Length> originals;
  if (result.weak_basis) {
    for (const auto &size : result.nominals)
      if (size.state == assess::Nominal::State::alive) originals.push_back(size.nominal);
    return originals;
  }
  const Length nominal = zone.original.nominal.value;
  originals = {nominal};
  if (const auto delivered = assess::delivery(zone, policy, nominal)) {
    originals.push_back(delivered->lower);
    originals.push_back(delivered->upper);
  }
  base::put_in_order(originals);
  return originals;
}

bool is_share(policy::CriterionKind kind) {
  return kind == policy::CriterionKind::percent || kind == policy::CriterionKind::margin;
}

} // namespace

std::vector<Spot> spots_of(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy,
                           const assess::ZoneResult &zone) {
  std::vector<Spot> spots;
  for (const auto &subject : zone.subjects) spots.push_back(spot_of(survey, assessment, policy, subject));
  return spots;
}

Used used_in(const survey::Zone &zone, const assess::Assessment &assessment, const assess::ZoneResult &result) {
  Used used;
  if (!result.weak_basis) used.original = zone.original.nominal.value;
  const auto criterion = std::ranges::find(assessment.criteria, result.measured_by, &policy::Criterion::id);
  if (criterion == assessment.criteria.end()) return used;
  if (is_share(criterion->kind)) used.loss = criterion->most_loss;
  else used.limit = std::ranges::find(result.criteria, result.measured_by, &assess::Applicability::criterion)->limit;
  return used;
}

Ranges ranges_for(const survey::Zone &zone, const policy::Policy &policy, const assess::ZoneResult &result, const Used &used) {
  const auto &rule = policy.robustness;
  Ranges over{.limits = rule.limits, .doubts = rule.doubts, .losses = rule.losses, .originals = originals_of(zone, policy, result)};
  over.doubts.push_back(as_it_is);
  if (used.limit) over.limits.push_back(*used.limit);
  if (used.loss) over.losses.push_back(*used.loss);
  base::put_in_order(over.limits);
  base::put_in_order(over.losses);
  base::put_in_order(over.doubts, &base::Decimal::ratio);
  return over;
}

Fraction left_of(Length original, Ratio loss) {
  return policy::fraction(base::complement(loss)) * Fraction{original.nm(), 1};
}

Tried try_at(const Spot &spot, Fraction least_nm, base::Decimal times) {
  Spot moved = spot;
  auto &factor = moved.doubt.factor;
  factor = {base::narrow(policy::product(factor.digits, times.digits)), factor.places + times.places};
  assess::Subject subject = assess::against(moved, {{.criterion = {}, .exact_nm = least_nm, .why_not = {}}});
  return {.result = std::move(subject.results.front()), .band_nm = subject.band_nm};
}

} // namespace strakebook::robustness
