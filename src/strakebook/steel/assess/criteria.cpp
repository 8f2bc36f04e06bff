#include "strakebook/steel/assess/criteria.h"

#include <algorithm>

#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/assess/words.h"

namespace strakebook::assess {

namespace {

using policy::Criterion;
using policy::CriterionKind;

constexpr std::string_view out_of_scope = "scope", basis_is_weak = "weak-basis", lacks_inputs = "inputs";

const survey::CriterionUse *use_of(const survey::Survey &survey, std::string_view id) {
  const auto found = std::ranges::find(survey.criteria, id, &survey::CriterionUse::id);
  return found == survey.criteria.end() ? nullptr : &*found;
}

void take(std::vector<Criterion> &into, Criterion criterion, const survey::CriterionUse *use) {
  if (std::ranges::find(into, criterion.id, &Criterion::id) != into.end()) return;
  if (use && use->asked_by.given()) criterion.asked_by = use->asked_by.text;
  into.push_back(std::move(criterion));
}

bool in_scope(const Criterion &criterion, policy::Plating plating) {
  return criterion.plating.empty() || std::ranges::find(criterion.plating, plating) != criterion.plating.end();
}

std::string working_key(const Criterion &criterion, policy::Plating plating) {
  return criterion.id + "/" + std::string(word_of(plating));
}

bool is_formula(const Criterion &criterion) {
  return criterion.kind == CriterionKind::rule_minimum && criterion.rule.has_value();
}

void report_missing(const survey::Survey &survey, const Criterion &criterion, std::string_view field,
                    std::string_view what, base::Diagnostics &sink) {
  const survey::CriterionUse *use = use_of(survey, criterion.id);
  sink.add({.code = base::Code::criterion_inputs,
            .span = use ? use->span : survey.vessel.span,
            .message = "the criterion " + criterion.id + " cannot be computed: the " + std::string(what) + " is not given",
            .expected = "vessel: " + std::string(field) + ", a length",
            .write = "give " + std::string(field) + " under vessel, with where it comes from; or leave the criterion out",
            .subject = {}});
}

/// The hull's figures for a formula; nullopt when one of them is missing, which is then reported.
std::optional<policy::HullFigures> figures_for(const survey::Survey &survey, const Criterion &criterion,
                                               base::Diagnostics &sink) {
  const survey::Vessel &vessel = survey.vessel;
  if (!vessel.draught) report_missing(survey, criterion, "draught", "draught", sink);
  if (!vessel.frame_spacing) report_missing(survey, criterion, "frame-spacing", "frame spacing", sink);
  if (!vessel.draught || !vessel.frame_spacing) return std::nullopt;
  return policy::HullFigures{.length = vessel.length.length.value,
                             .draught = vessel.draught->length.value,
                             .spacing = vessel.frame_spacing->length.value,
                             .wing_voids = vessel.wing_voids};
}

Limit limit_for(const survey::Zone &zone, const policy::Policy &policy, const Criterion &criterion,
                const std::map<std::string, policy::RuleWorking> &workings) {
  Limit limit{.criterion = criterion.id, .exact_nm = {}, .why_not = {}};
  const auto not_applicable = [&](std::string_view why) {
    limit.why_not = why;
    return limit;
  };
  if (!in_scope(criterion, zone.plating)) return not_applicable(out_of_scope);
  switch (criterion.kind) {
  case CriterionKind::absolute: limit.exact_nm = Fraction{criterion.limit.nm(), 1}; break;
  case CriterionKind::percent:
    if (weak_basis(zone, policy)) return not_applicable(basis_is_weak);
    limit.exact_nm = policy::fraction(base::complement(criterion.most_loss)) * Fraction{zone.original.nominal.value.nm(), 1};
    break;
  case CriterionKind::rule_minimum:
    const auto working = workings.find(working_key(criterion, zone.plating));
    if (working == workings.end()) return not_applicable(lacks_inputs);
    limit.exact_nm = Fraction{working->second.limit.nm(), 1};
    break;
  }
  return limit;
}

CriterionResult result_for(const Spot &spot, const Limit &limit) {
  CriterionResult result{.criterion = limit.criterion, .why_not = limit.why_not, .governs = limit.governs};
  if (!limit.exact_nm) return result;
  const Fraction margin = Fraction{spot.judged().nm(), 1} + Fraction{-limit.exact_nm->num, limit.exact_nm->den};
  result.verdict = judged(margin, spot.doubt);
  result.bare = bare(margin);
  result.limit = Length::nanometres(policy::rounded_up(*limit.exact_nm));
  result.margin = spot.judged() - result.limit;
  return result;
}

} // namespace

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

std::map<std::string, policy::RuleWorking> rule_workings(const survey::Survey &survey,
                                                         const std::vector<Criterion> &criteria, base::Diagnostics &sink) {
  std::map<std::string, policy::RuleWorking> workings;
  for (const Criterion &criterion : criteria) {
    const auto applies = [&](const survey::Zone &zone) { return in_scope(criterion, zone.plating); };
    if (!is_formula(criterion) || std::ranges::none_of(survey.zones, applies)) continue;
    const auto figures = figures_for(survey, criterion, sink);
    if (!figures) continue;
    for (const survey::Zone &zone : survey.zones)
      if (applies(zone))
        workings[working_key(criterion, zone.plating)] = policy::rule_minimum(*criterion.rule, *figures, zone.plating);
  }
  return workings;
}

std::vector<Limit> limits_for(const survey::Survey &survey, const survey::Zone &zone, const policy::Policy &policy,
                              const std::vector<Criterion> &criteria,
                              const std::map<std::string, policy::RuleWorking> &workings) {
  const auto decision = std::ranges::find(survey.decisions, zone.id, &survey::Decision::zone);
  std::vector<Limit> limits;
  for (const Criterion &criterion : criteria) {
    Limit limit = limit_for(zone, policy, criterion, workings);
    limit.governs = decision != survey.decisions.end() && decision->criterion == criterion.id;
    limits.push_back(std::move(limit));
  }
  return limits;
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
