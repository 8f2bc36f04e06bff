#include "strakebook/report/changed_marks.h"

#include "strakebook/compose/ids.h"
#include "strakebook/paper/content/difference.h"
#include "strakebook/steel/review/review.h"
#include "strakebook/steel/survey/reader.h"

namespace strakebook {

namespace {

survey::Survey under_this_issue(survey::Survey before, const survey::Survey &now) {
  before.report.issue = now.report.issue;
  before.report.issued = now.report.issued;
  before.report.state = now.report.state;
  before.report.supersedes = now.report.supersedes;
  before.surveyor.signed_on = now.surveyor.signed_on;
  before.recipients = now.recipients;
  before.issue_record = now.issue_record;
  before.amendment = now.amendment;
  before.addenda = now.addenda;
  return before;
}

/// Its warnings, which are printed with their answers.
base::Diagnostics findings_of(const survey::Survey &survey, const Case &before) {
  base::Diagnostics found;
  survey::check_survey(survey, before.house.policy, found);
  const auto assessment = assess::assess(survey, before.house.policy, found);
  review::review(survey, assessment, before.outlook, before.house.policy, found, nullptr);
  return found;
}

} // namespace

void mark_what_changed(content::Document &now, const compose::Source &source, const Case &the_case) {
  if (!the_case.before || !the_case.amended)
    return;
  const Case &before = *the_case.before;
  const auto survey = under_this_issue(before.survey, source.survey);
  const auto findings = findings_of(survey, before);
  auto house = before.house; // a word that the layouts of that day did not have yet is today's
  house.wording.words.insert(the_case.house.wording.words.begin(), the_case.house.wording.words.end());
  const auto then = compose::compose({.survey = survey,
                                      .assessment = before.assessment,
                                      .outlook = before.outlook,
                                      .house = house,
                                      .findings = findings,
                                      .photos = before.photos,
                                      .inputs = source.inputs,
                                      .tool = source.tool,
                                      .issued_digest = source.issued_digest,
                                      .past = source.past,
                                      .amended = source.amended,
                                      .before = nullptr});
  content::mark_changes(now, then, {compose::section_id("changes")});
}

} // namespace strakebook
