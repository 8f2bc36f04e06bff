#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

/// What every check of the review is given, and where it says what it found.
namespace strakebook::review {

using base::Length;

struct Subject {
  const survey::Survey &survey;
  const assess::Assessment &assessment;
  const policy::Policy &policy;
};

/// One finding; its severity follows from the report's state.
struct Finding {
  base::Code code{};
  base::SourceSpan span;
  std::string message, expected, write;
};
using Findings = std::vector<Finding>;

/// `span` if it has a place, else `parent`.
const base::SourceSpan &nearest(const base::SourceSpan &span, const base::SourceSpan &parent);

/// "a, b and c".
std::string listed(const std::vector<std::string> &parts);

/// At least four words, the last of which ends with a full stop.
bool full_sentence(std::string_view text);

const survey::Decision *decision_of(const survey::Survey &survey, std::string_view zone);
const policy::Criterion *criterion_in_use(const assess::Assessment &assessment, std::string_view id);

/// False where the criterion was found not applicable to the zone (scope, weak basis), or is not in use at all.
bool applicable(const Subject &subject, const assess::ZoneResult &zone, std::string_view criterion);

// The checks, each in its own file, in the order in which review runs them.
Findings required_fields(const Subject &subject);
Findings required_rows(const Subject &subject);
Findings conflicts(const Subject &subject);
Findings decisions(const Subject &subject);
/// Refloat advice that the decisions, a class A item or an afloat survey contradict.
Findings advice(const Subject &subject);
Findings instruments(const Subject &subject);
Findings recommendations(const Subject &subject);
Findings doublers(const Subject &subject);

} // namespace strakebook::review
