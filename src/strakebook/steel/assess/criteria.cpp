#include "strakebook/steel/assess/criteria.h"

#include <algorithm>

#include "strakebook/steel/assess/conformance.h"
#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/assess/workings.h"

namespace strakebook::assess {

namespace {

using policy::Criterion;
using policy::CriterionKind;

constexpr std::string_view out_of_scope = "scope", not_declared = "not-declared", basis_is_weak = "weak-basis",
                           too_thick = "thicker", lacks_inputs = "inputs";

const survey::CriterionUse *use_of(const survey::Survey &survey, std::string_view id) {
  const auto found = std::ranges::find(survey.criteria, id, &survey::CriterionUse::id);
  return found == survey.criteria.end() ? nullptr : &*found;
}

void take(std::vector<Criterion> &into, Criterion criterion, const survey::CriterionUse *use) {
  if (std::ranges::find(into, criterion.id, &Criterion::id) != into.end()) return;
  if (use && use->asked_by.given()) criterion.asked_by = use->asked_by.text;
  into.push_back(std::move(criterion));
}

bool is_share(const Criterion &criterion) {
  return criterion.kind == CriterionKind::percent || criterion.kind == CriterionKind::margin;
}

/// Why a criterion does not apply to a zone, whatever its figures; empty: it does.
std::string_view shut_out(const survey::Vessel &vessel, const survey::Zone &zone, const policy::Policy &policy,
                          const Criterion &criterion) {
  if (!in_scope(criterion, zone.plating)) return out_of_scope;
  if (!declared(vessel, criterion)) return not_declared;
  if ((is_share(criterion) || criterion.original_at_most) && weak_basis(zone, policy)) return basis_is_weak;
  if (criterion.original_at_most && zone.original.nominal.value > *criterion.original_at_most) return too_thick;
  return {};
}

/// What is left of the original when this share of it has gone.
Fraction left_after(const survey::Zone &zone, Fraction share) {
  const Fraction rest = Fraction{1, 1} + Fraction{-share.num, share.den};
  return rest * Fraction{zone.original.nominal.value.nm(), 1};
}

void set_exact(Limit &limit, const survey::Zone &zone, const Criterion &criterion,
               const std::map<std::string, policy::RuleWorking> &workings) {
  if (criterion.kind == CriterionKind::absolute) limit.exact_nm = Fraction{criterion.limit.nm(), 1};
  else if (is_share(criterion)) limit.exact_nm = left_after(zone, policy::fraction(criterion.most_loss));
  else if (const auto found = workings.find(working_key(criterion, zone.plating)); found != workings.end()) {
    limit.exact_nm = Fraction{found->second.limit.nm(), 1};
    limit.others = found->second.others;
  } else {
    limit.why_not = lacks_inputs;
  }
  if (criterion.kind == CriterionKind::margin)
    limit.substantial_nm =
        left_after(zone, policy::fraction(criterion.most_loss) * policy::fraction(criterion.substantial_from));
}

bool is_told(const std::optional<survey::LengthFact> &fact) { return fact && fact->from.origin == base::Origin::told; }

/// Whether what the criterion asks of the zone rests on what somebody told.
bool rests_on_told(const survey::Vessel &vessel, const survey::Zone &zone, const Criterion &criterion) {
  switch (criterion.kind) {
  case CriterionKind::absolute: return false;
  case CriterionKind::percent:
  case CriterionKind::margin: return told(zone.original);
  case CriterionKind::rule_minimum:
    return is_told(vessel.length) || is_told(vessel.draught) || is_told(vessel.frame_spacing);
  case CriterionKind::passenger_minimum:
    return is_told(vessel.waterline_length ? vessel.waterline_length : vessel.length) || is_told(vessel.draught) ||
           is_told(vessel.frame_spacing);
  }
  return false;
}

Fraction over(Length remaining, Fraction limit) {
  return Fraction{remaining.nm(), 1} + Fraction{-limit.num, limit.den};
}

CriterionResult result_for(const Spot &spot, const Limit &limit) {
  CriterionResult result{.criterion = limit.criterion, .why_not = limit.why_not, .governs = limit.governs, .told = limit.told};
  if (!limit.exact_nm) return result;
  const Fraction margin = over(spot.judged(), *limit.exact_nm);
  result.verdict = judged(margin, spot.doubt);
  result.bare = bare(margin);
  result.limit = Length::nanometres(policy::rounded_up(*limit.exact_nm));
  result.margin = spot.judged() - result.limit;
  result.conformance = conformance(margin, spot.doubt.u2);
  if (!limit.substantial_nm) return result;
  result.substantial_below = Length::nanometres(policy::rounded_up(*limit.substantial_nm));
  result.substantial = bare(over(spot.judged(), *limit.substantial_nm)) == Bare::over && result.bare != Bare::over;
  return result;
}

} // namespace

bool in_scope(const Criterion &criterion, policy::Plating plating) {
  return criterion.plating.empty() || std::ranges::find(criterion.plating, plating) != criterion.plating.end();
}

bool declared(const survey::Vessel &vessel, const Criterion &criterion) {
  if (!criterion.declared) return true;
  switch (*criterion.declared) {
  case policy::Declaration::light_scantlings: return vessel.light_scantlings && vessel.light_scantlings->value;
  case policy::Declaration::passengers: return vessel.carries.text == survey::carries_passengers;
  }
  return false;
}

std::vector<Criterion> criteria_in_use(const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<Criterion> used;
  for (const std::string &id : policy.criteria_order) {
    const survey::CriterionUse *use = use_of(survey, id);
    if (const auto found = policy.criteria.find(id); use && found != policy.criteria.end()) take(used, found->second, use);
  }
  for (const survey::CriterionUse &use : survey.criteria)
    if (const auto found = policy.criteria.find(use.id); found != policy.criteria.end()) take(used, found->second, &use);
  for (const Criterion &own : survey.own_criteria) take(used, own, use_of(survey, own.id));
  return used;
}

std::vector<Limit> limits_for(const survey::Survey &survey, const survey::Zone &zone, const policy::Policy &policy,
                              const std::vector<Criterion> &criteria,
                              const std::map<std::string, policy::RuleWorking> &workings) {
  const auto decision = std::ranges::find(survey.decisions, zone.id, &survey::Decision::zone);
  std::vector<Limit> limits;
  for (const Criterion &criterion : criteria) {
    Limit limit{.criterion = criterion.id, .exact_nm = {}, .why_not = {}};
    limit.why_not = shut_out(survey.vessel, zone, policy, criterion);
    if (limit.why_not.empty()) set_exact(limit, zone, criterion, workings);
    limit.governs = decision != survey.decisions.end() && decision->criterion == criterion.id;
    limit.told = limit.exact_nm && rests_on_told(survey.vessel, zone, criterion);
    limits.push_back(std::move(limit));
  }
  return limits;
}

Applicability applicability(const Limit &limit) {
  Applicability result{.criterion = limit.criterion, .why_not = limit.why_not, .limit = {}, .told = limit.told};
  if (limit.exact_nm) result.limit = Length::nanometres(policy::rounded_up(*limit.exact_nm));
  return result;
}

Subject against(const Spot &spot, const std::vector<Limit> &limits) {
  Subject subject{.kind = spot.kind,
                  .id = spot.id,
                  .remaining = spot.remaining,
                  .low = spot.low,
                  .indicative = spot.indicative,
                  .u = uncertainty(spot.doubt),
                  .factor = spot.doubt.factor,
                  .band_nm = band(spot.doubt),
                  .results = {}};
  for (const Limit &limit : limits) subject.results.push_back(result_for(spot, limit));
  return subject;
}

} // namespace strakebook::assess
