#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/amend/past_issue.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/outlook/outlook.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

/// What every check of the review is given, and where it says what it found.
namespace strakebook::review {

using base::Length;

struct Subject {
  const survey::Survey &survey;
  const assess::Assessment &assessment;
  const outlook::Outlook &outlook;
  const policy::Policy &policy;
  const amend::Amended *amended = nullptr; ///< the issue that this one replaces, and what changed; null: not known, or none
};

/// One finding; its severity follows from the report's state. With a subject it is a warning in every state, and the survey
/// may acknowledge it by that name.
struct Finding {
  base::Code code{};
  base::SourceSpan span;
  std::string message, expected, write;
  std::string subject = {};
};
using Findings = std::vector<Finding>;

/// `span` if it has a place, else `parent`.
const base::SourceSpan &nearest(const base::SourceSpan &span, const base::SourceSpan &parent);

/// "a, b and c".
std::string listed(const std::vector<std::string> &parts);

/// At least four words, the last of which ends with a full stop.
bool full_sentence(std::string_view text);

/// Does the text hold this word, whole? Stops, brackets and quotes about a word do not count, nor does a large first letter.
bool says(std::string_view text, std::string_view word);

/// A warning that is acknowledged by `subject`; what to write is made from it.
Finding to_acknowledge(base::Code code, const base::SourceSpan &span, std::string subject, std::string message,
                       std::string expected);

/// The sentences of a text, trimmed. A full stop, question or exclamation mark ends one where blanks and then no small letter
/// follow, or the text ends; not after one letter alone, letters with a stop among them, or one of `abbreviations`. A stop
/// inside a figure has no blank behind it.
std::vector<std::string_view> sentences(std::string_view text, const std::vector<std::string> &abbreviations);

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
/// Adverse claims and measured statements that cite no mark, pit, photo or note.
Findings citations(const Subject &subject);
/// Days of inspection, signature, issue, next survey and issue record; what an issue after the first supersedes.
Findings dates(const Subject &subject);
/// What changed since the issue before has its reasons, and no reason is without a change; who had that issue was told.
Findings amendment(const Subject &subject);
/// Items open from earlier reports: what became of each.
Findings carried(const Subject &subject);
/// Addenda: their days, who looked, the evidence of what they close.
Findings addenda(const Subject &subject);
/// The reason on page one is neither a word nor a page.
Findings reason_on_page_one(const Subject &subject);

/// An issue after the first whose predecessor is not known; a warning in every state, which nothing can acknowledge.
Findings replaced_unknown(const Subject &subject);

// Warnings to acknowledge.
Findings stations_beyond(const Subject &subject);
/// "None found" of pits or doublers where one is recorded.
Findings none_found_denied(const Subject &subject);
/// Measured statements with a figure that the place they cite does not have.
Findings figures_misquoted(const Subject &subject);
/// Freeboard and openings with the steel of the schedule, and what they are not reckoned for.
Findings floating(const Subject &subject);
/// Anodes that do not suit the water or have not worn, and work that makes her too wide to pass.
Findings protection(const Subject &subject);
/// Places that do not meet the limit of their zone, and that nothing recommended or scheduled covers; not in a preliminary, and
/// not where the decision that names the limit is asked for first.
Findings uncovered(const Subject &subject);
/// Schedule items against the usual figures of plate work.
Findings plate_work(const Subject &subject);
/// Earlier surveys whose datum cannot be right, places thicker than before, a next survey later than the life left allows.
Findings earlier_surveys(const Subject &subject);

} // namespace strakebook::review
