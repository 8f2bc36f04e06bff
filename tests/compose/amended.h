#pragma once

#include "helpers.h"
#include "support/house_sample.h"

/// The small survey in two issues, and what changed between them made by hand.
namespace strakebook::sample {

struct TwoIssues {
  Composed before, now;
  amend::Amended amended;

  compose::Before earlier() const { return {before.survey, before.assessment, before.outlook}; }

  /// `earlier` must outlive what is returned.
  compose::Source source(const compose::Before &earlier) const {
    auto out = now.source();
    out.amended = &amended;
    out.before = &earlier;
    out.past = {amended.replaces};
    return out;
  }

  content::Document composed() const {
    const auto there = earlier();
    return compose::compose(source(there));
  }
};

/// SW 6 was 5.8 and is 3.8; pit P1 was deeper by 0.4; zone W was cleaned and coated, and is built up; item 1 rose with it.
inline TwoIssues two_issues() {
  TwoIssues out{small_survey(), small_survey(), {}};
  auto &now = out.now.survey;
  for (auto &mark : now.marks)
    if (mark.id() == "SW 6") mark.repeats = {mm("3.8"), mm("3.8")};
  now.pits.front().depth = mm("1.6");
  out.before.survey.decisions.front().action = "clean and recoat";
  out.before.survey.report.issue = 1;
  out.before.survey.report.issued->value = {2026, 10, 16};
  now.amendment = survey::Amendment{.cause = {.text = "Figures were typed from the notebook."},
                                    .found_by = {.text = "the buyer's underwriter"},
                                    .found_on = base::Located<base::Date>{{2026, 10, 18}, {}},
                                    .checked = {.text = "All readings were compared with the gauge's file."}};
  now.amendment->told.push_back({.who = {.text = "the buyer"},
                                 .how = {.text = "by letter"},
                                 .on = base::Located<base::Date>{{2026, 10, 19}, {}},
                                 .acknowledged = base::Located<base::Date>{{2026, 10, 20}, {}}});
  assess_again(out.now);
  assess_again(out.before);
  out.amended.replaces = {.issue = 1,
                          .date = base::Date{2026, 10, 16},
                          .digest = "3fa912c477b0" + std::string(52, 'a'),
                          .recipients = {{.who = {.text = "the buyer"}}, {.who = {.text = "the yard"}}}};
  using enum amend::Kind;
  using enum amend::How;
  auto &all = out.amended.changes.all;
  all.push_back({.kind = decision, .how = changed, .subject = "decision W", .differences = {{"action", "clean and recoat", "weld build-up"}},
                 .why = {.text = "SW 6 keeps 3.8."}});
  all.push_back({.kind = reading, .how = changed, .subject = "SW 6", .differences = {{"reading", "5.8", "3.8"}},
                 .remaining_before = length("5.8"), .remaining_after = length("3.8"), .why = {.text = "Digits exchanged. The file says 3.8."}});
  all.push_back({.kind = pit, .how = changed, .subject = "P1", .differences = {{"depth", "1.2", "1.6"}},
                 .remaining_before = length("4.4"), .remaining_after = length("4.0"), .why = {.text = "Copied from the line above."}});
  out.amended.changes.moved = {{"W", "absolute-4.0", "SW 6", assess::Verdict::meets, assess::Verdict::falls_short}};
  out.amended.changes.stands = {{"B", {.text = "Nothing under it moved."}}};
  return out;
}

} // namespace strakebook::sample
