#include "strakebook/steel/assess/workings.h"

#include <algorithm>

#include "strakebook/steel/assess/criteria.h"
#include "strakebook/steel/assess/words.h"

namespace strakebook::assess {

namespace {

using policy::Criterion;
using policy::CriterionKind;

bool is_formula(const Criterion &criterion) { return criterion.rule.has_value() || criterion.passenger.has_value(); }

void report_missing(const survey::Survey &survey, const Criterion &criterion, std::string_view field,
                    std::string_view what, base::Diagnostics &sink) {
  const auto use = std::ranges::find(survey.criteria, criterion.id, &survey::CriterionUse::id);
  sink.add({.code = base::Code::criterion_inputs,
            .span = use != survey.criteria.end() ? use->span : survey.vessel.span,
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
  const bool by_waterline = criterion.kind == CriterionKind::passenger_minimum && vessel.waterline_length;
  return policy::HullFigures{.length = (by_waterline ? *vessel.waterline_length : vessel.length).length.value,
                             .draught = vessel.draught->length.value,
                             .spacing = vessel.frame_spacing->length.value,
                             .wing_voids = vessel.wing_voids && vessel.wing_voids->value};
}

policy::RuleWorking worked(const Criterion &criterion, const policy::HullFigures &figures, policy::Plating plating) {
  return criterion.passenger ? policy::passenger_minimum(*criterion.passenger, figures)
                             : policy::rule_minimum(*criterion.rule, figures, plating);
}

} // namespace

std::string working_key(const Criterion &criterion, policy::Plating plating) {
  return criterion.id + "/" + std::string(word_of(plating));
}

std::map<std::string, policy::RuleWorking> rule_workings(const survey::Survey &survey,
                                                         const std::vector<Criterion> &criteria, base::Diagnostics &sink) {
  std::map<std::string, policy::RuleWorking> workings;
  for (const Criterion &criterion : criteria) {
    const auto applies = [&](const survey::Zone &zone) {
      return in_scope(criterion, zone.plating) && declared(survey.vessel, criterion);
    };
    if (!is_formula(criterion) || std::ranges::none_of(survey.zones, applies)) continue;
    const auto figures = figures_for(survey, criterion, sink);
    if (!figures) continue;
    for (const survey::Zone &zone : survey.zones)
      if (applies(zone)) workings[working_key(criterion, zone.plating)] = worked(criterion, *figures, zone.plating);
  }
  return workings;
}

} // namespace strakebook::assess
