#pragma once

#include "strakebook/steel/assess/doubt.h"

/// The criteria that a survey uses, what each of them asks of a zone, and how a place stands against them.
namespace strakebook::assess {

bool in_scope(const policy::Criterion &criterion, policy::Plating plating);

/// Whether the vessel is declared what the criterion asks for; true where it asks for nothing.
bool declared(const survey::Vessel &vessel, const policy::Criterion &criterion);

/// The criteria in use: the house's in the house's order, then the survey's own in the order written.
std::vector<policy::Criterion> criteria_in_use(const survey::Survey &survey, const policy::Policy &policy);

/// What one criterion asks of one zone; `exact_nm` absent: not applicable, and why.
struct Limit {
  std::string criterion;
  std::optional<Fraction> exact_nm; ///< least remaining thickness; of a rule formula already rounded up to a nanometre
  std::string why_not;                ///< see Applicability
  bool governs = false;
  std::optional<Fraction> substantial_nm; ///< of an allowable margin: what is left where substantial corrosion begins
  std::vector<policy::OtherReading> others; ///< what other readings of a rule formula ask
  bool told = false; ///< see CriterionResult::told
};
std::vector<Limit> limits_for(const survey::Survey &survey, const survey::Zone &zone, const policy::Policy &policy,
                              const std::vector<policy::Criterion> &criteria,
                              const std::map<std::string, policy::RuleWorking> &workings);

Applicability applicability(const Limit &limit);

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
