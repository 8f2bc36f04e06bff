#pragma once

#include "strakebook/steel/assess/doubt.h"

/// The criteria that a survey uses, what each of them asks of a zone, and how a place stands against them.
namespace strakebook::assess {

/// The criteria in use: the house's in the house's order, then the survey's own in the order written.
std::vector<policy::Criterion> criteria_in_use(const survey::Survey &survey, const policy::Policy &policy);

/// Workings of every rule formula for each kind of plating that it applies to, keyed "criterion/plating". A formula without
/// draught or frame spacing gives none and adds criterion_inputs.
std::map<std::string, policy::RuleWorking> rule_workings(const survey::Survey &survey,
                                                         const std::vector<policy::Criterion> &criteria,
                                                         base::Diagnostics &sink);

/// What one criterion asks of one zone; `exact_nm` absent: not applicable, and why.
struct Limit {
  std::string criterion;
  std::optional<Fraction> exact_nm; ///< least remaining thickness; of a rule formula already rounded up to a nanometre
  std::string why_not;
  bool governs = false;
};
std::vector<Limit> limits_for(const survey::Survey &survey, const survey::Zone &zone, const policy::Policy &policy,
                              const std::vector<policy::Criterion> &criteria,
                              const std::map<std::string, policy::RuleWorking> &workings);

/// A place of the zone with its doubt, against every limit.
struct Spot {
  Subject::Kind kind = Subject::Kind::plate;
  std::string id;
  Length remaining;          ///< as displayed
  std::optional<Length> low; ///< what it is judged by where that is less
  bool indicative = false;
  Doubt doubt;
  Length judged() const { return low.value_or(remaining); }
};
Subject against(const Spot &spot, const std::vector<Limit> &limits);

} // namespace strakebook::assess
