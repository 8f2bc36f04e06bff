#pragma once

#include "strakebook/steel/assess/assessment.h"

/// The rule formulas with this hull's figures.
namespace strakebook::assess {

/// Under this key the workings of a criterion for a kind of plating are kept: "inland-rule/bilge".
std::string working_key(const policy::Criterion &criterion, policy::Plating plating);

/// Workings of every rule formula for each kind of plating that it applies to. A formula that applies and lacks a figure gives
/// none and adds criterion_inputs.
std::map<std::string, policy::RuleWorking> rule_workings(const survey::Survey &survey,
                                                         const std::vector<policy::Criterion> &criteria,
                                                         base::Diagnostics &sink);

} // namespace strakebook::assess
