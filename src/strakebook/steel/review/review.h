#pragma once

#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/steel/amend/past_issue.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/outlook/outlook.h"
#include "strakebook/steel/policy/policy.h"
#include "strakebook/steel/survey/survey.h"

namespace strakebook::review {

/// May this report go out in its state? Adds an error for everything a final lacks, in report order: required fields,
/// unanswered conflicts, adverse decisions without criterion, reason, evidence or alternatives, departures from the ladder without a
/// reason, opinions on too few readings, block checks, recommendations, changes since the issue before without a reason, unacknowledged warnings already in `sink` or added
/// here (places beyond the hull, "none found" denied by a record, figures misquoted). A preliminary may carry no decision; a draft is told the same things as warnings.
void review(const survey::Survey &survey, const assess::Assessment &assessment, const outlook::Outlook &outlook,
            const policy::Policy &policy, base::Diagnostics &sink, const amend::Amended *amended = nullptr);

/// The field paths that a layout may ask for in policy.required_fields, in report order. A layout that names another one
/// is in error; should one get here, required_missing says so.
std::vector<std::string> known_required_fields();

} // namespace strakebook::review
