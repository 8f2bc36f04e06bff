#include "strakebook/steel/review/review.h"

#include <algorithm>

#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/review/requirements.h"
#include "strakebook/steel/review/warnings.h"

namespace strakebook::review {

namespace {

template <class Items>
void refuse_in_preliminary(Findings &found, const Items &items, std::string_view key, const base::SourceSpan &parent) {
  if (items.empty()) return;
  found.push_back({base::Code::state_content, nearest(items.front().span, parent),
                   "a preliminary report carries no " + std::string(key),
                   "readings and what is computed from them, no more",
                   "leave " + std::string(key) + " out, or write state: draft or state: final"});
}

Findings preliminary_content(const survey::Survey &survey) {
  Findings found;
  refuse_in_preliminary(found, survey.decisions, "decisions", survey.span);
  refuse_in_preliminary(found, survey.recommendations, "recommendations", survey.span);
  refuse_in_preliminary(found, survey.steelwork, "steelwork", survey.span);
  for (const survey::Words *advice : {&survey.answer.refloat, &survey.answer.reason})
    if (advice->given()) refuse_in_preliminary(found, std::vector{*advice}, "refloat advice or its reason", survey.span);
  return found;
}

Findings everything_a_final_needs(const Subject &subject) {
  Findings found;
  for (const auto check : {required_fields, required_rows, dates, amendment, reason_on_page_one, conflicts, decisions, citations, advice,
                           instruments, recommendations, doublers, carried, addenda})
    std::ranges::move(check(subject), std::back_inserter(found));
  return found;
}

Findings to_be_acknowledged(const Subject &subject) {
  Findings found;
  for (const auto check : {stations_beyond, none_found_denied, figures_misquoted, earlier_surveys, uncovered, plate_work, floating, protection})
    std::ranges::move(check(subject), std::back_inserter(found));
  return found;
}

/// What goes to the reader: in a draft a finding does not stop the report, so it is a warning without a name to acknowledge.
void report(Findings found, base::Severity severity, base::Diagnostics &sink) {
  for (Finding &finding : found)
    sink.add({.severity = finding.subject.empty() ? severity : base::Severity::warning,
              .code = finding.code,
              .span = std::move(finding.span),
              .message = std::move(finding.message),
              .expected = std::move(finding.expected),
              .write = std::move(finding.write),
              .subject = std::move(finding.subject)});
}

} // namespace

void review(const survey::Survey &survey, const assess::Assessment &assessment, const outlook::Outlook &outlook,
            const policy::Policy &policy, base::Diagnostics &sink, const amend::Amended *amended) {
  const Subject subject{survey, assessment, outlook, policy, amended};
  const survey::State state = survey.report.state;
  const auto severity = state == survey::State::draft ? base::Severity::warning : base::Severity::error;

  report(replaced_unknown(subject), base::Severity::warning, sink);
  report(to_be_acknowledged(subject), severity, sink);
  Findings about_warnings = acknowledged_for_nothing(subject, sink);
  if (state == survey::State::final) std::ranges::move(unacknowledged(subject, sink), std::back_inserter(about_warnings));
  report(state == survey::State::preliminary ? preliminary_content(survey) : everything_a_final_needs(subject), severity,
         sink);
  report(std::move(about_warnings), severity, sink);
}

std::vector<std::string> known_required_fields() {
  std::vector<std::string> paths;
  for (const Requirement &requirement : requirements()) paths.emplace_back(requirement.path);
  return paths;
}

} // namespace strakebook::review
