#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

using Day = survey::Given<base::Date>;
constexpr std::string_view replaces_nothing = "none"; ///< as a survey writes it

/// `later` must not lie before `earlier`.
void in_order(Findings &found, const Subject &subject, const Day &earlier, std::string_view first, const Day &later,
              std::string_view second) {
  if (!earlier || !later || earlier->value <= later->value) return;
  found.push_back({base::Code::dates_disagree, nearest(later->span, subject.survey.span),
                   std::string(second) + ", " + base::iso(later->value) + ", lies before " + std::string(first) + ", " +
                       base::iso(earlier->value),
                   base::iso(earlier->value) + " or later", "the day as it was, year first: " + base::iso(earlier->value)});
}

void next_survey_is_later(Findings &found, const Subject &subject) {
  const Day &inspected = subject.survey.report.inspected, &next = subject.survey.answer.next_survey_by;
  if (!inspected || !next || inspected->value < next->value) return;
  found.push_back({base::Code::dates_disagree, nearest(next->span, subject.survey.span),
                   "the next survey, by " + base::iso(next->value) + ", is not after the inspection, " + base::iso(inspected->value),
                   "a day after the inspection", "next-survey-by: a later day"});
}

void issue_says_what_it_replaces(Findings &found, const Subject &subject) {
  const survey::Report &report = subject.survey.report;
  if (report.issue <= 1 || (report.supersedes.given() && report.supersedes.text != replaces_nothing)) return;
  found.push_back({base::Code::required_missing, nearest(report.supersedes.span, nearest(report.span, subject.survey.span)),
                   "report.supersedes is missing: this is issue " + std::to_string(report.issue) + ", and an earlier one went out",
                   "an issue after the first says which one it replaces",
                   "supersedes: issue " + std::to_string(report.issue - 1)});
}

/// A correction comes after the issue that it corrects, and nothing is told of it that came after it went out.
void correction_in_order(Findings &found, const Subject &subject) {
  const auto &amendment = subject.survey.amendment;
  if (!amendment || !subject.amended) return;
  const Day &issued = subject.survey.report.issued;
  const Day replaced = subject.amended->replaces.date ? Day({*subject.amended->replaces.date, {}}) : Day();
  constexpr std::string_view of_replaced = "the issue that is replaced", of_issue = "the day of issue";
  in_order(found, subject, replaced, of_replaced, issued, of_issue);
  in_order(found, subject, replaced, of_replaced, amendment->found_on, "the day the fault was found");
  in_order(found, subject, amendment->found_on, "the day the fault was found", issued, of_issue);
  for (const survey::Told &told : amendment->told) {
    const std::string who = "the day " + told.who.text + " was told", answered = "the answer of " + told.who.text;
    in_order(found, subject, replaced, of_replaced, told.on, who);
    in_order(found, subject, told.on, who, issued, of_issue);
    in_order(found, subject, told.on, who, told.acknowledged, answered);
    in_order(found, subject, told.acknowledged, answered, issued, of_issue);
  }
}

void record_ascends(Findings &found, const Subject &subject) {
  const auto &record = subject.survey.issue_record;
  for (std::size_t i = 1; i < record.size(); ++i) {
    const auto &before = record[i - 1], &line = record[i];
    if (line.issue <= before.issue)
      found.push_back({base::Code::dates_disagree, nearest(line.span, subject.survey.span),
                       "the issue record lists issue " + std::to_string(line.issue) + " after issue " + std::to_string(before.issue),
                       "each issue once, from the first to the last", "the lines of issue-record in the order of their issues"});
    in_order(found, subject, before.on, "that of the line before it", line.on, "the day of issue " + std::to_string(line.issue));
  }
}

} // namespace

Findings dates(const Subject &subject) {
  Findings found;
  const survey::Survey &survey = subject.survey;
  const Day &inspected = survey.report.inspected, &signed_on = survey.surveyor.signed_on, &issued = survey.report.issued;
  in_order(found, subject, inspected, "the inspection", signed_on, "the signature");
  in_order(found, subject, signed_on, "the signature", issued, "the issue");
  if (!signed_on) in_order(found, subject, inspected, "the inspection", issued, "the issue");
  next_survey_is_later(found, subject);
  issue_says_what_it_replaces(found, subject);
  record_ascends(found, subject);
  correction_in_order(found, subject);
  return found;
}

} // namespace strakebook::review
