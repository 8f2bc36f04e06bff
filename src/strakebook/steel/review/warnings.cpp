#include "strakebook/steel/review/warnings.h"

#include <algorithm>

namespace strakebook::review {

namespace {

bool to_be_answered(const base::Diagnostic &diagnostic) {
  return diagnostic.severity == base::Severity::warning && !diagnostic.subject.empty();
}

bool answered(const survey::Survey &survey, const std::string &warning) {
  return std::ranges::any_of(survey.acknowledgements, [&](const survey::Acknowledgement &answer) {
    return answer.subject == warning && answer.reason.given();
  });
}

} // namespace

Findings unacknowledged(const Subject &subject, const base::Diagnostics &so_far) {
  Findings found;
  for (const base::Diagnostic &diagnostic : so_far.all())
    if (to_be_answered(diagnostic) && !answered(subject.survey, diagnostic.subject))
      found.push_back({base::Code::warning_unacknowledged, nearest(diagnostic.span, subject.survey.span),
                       "nobody answers for this warning: " + diagnostic.message,
                       "the value corrected, or the warning acknowledged with a reason",
                       "acknowledged:\n  " + diagnostic.subject + ": why it stands"});
  return found;
}

Findings acknowledged_for_nothing(const Subject &subject, const base::Diagnostics &so_far) {
  Findings found;
  for (const survey::Acknowledgement &answer : subject.survey.acknowledgements) {
    const auto reports = [&](const base::Diagnostic &diagnostic) {
      return to_be_answered(diagnostic) && diagnostic.subject == answer.subject;
    };
    if (std::ranges::any_of(so_far.all(), reports)) continue;
    found.push_back({base::Code::unknown_acknowledgement, nearest(answer.span, subject.survey.span),
                     "\"" + answer.subject + "\" is acknowledged, but nothing of that name is reported",
                     "the name that a warning prints", "leave it out, or write the name as the warning prints it"});
  }
  return found;
}

} // namespace strakebook::review
