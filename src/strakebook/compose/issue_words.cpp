#include "strakebook/compose/issue_words.h"

#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"

namespace strakebook::compose {

using content::plain;
using content::operator+;

bool issued(const Scope &scope) { return !scope.source.issued_digest.empty(); }

std::string short_digest(std::string_view sha256) {
  constexpr std::size_t shown = 12;
  return untorn(in_fours(sha256.substr(0, shown)));
}

std::string past_issue_words(const Scope &scope, const amend::PastIssue &past) {
  const base::Fill issue{"issue", std::to_string(past.issue)}, digest{"digest", short_digest(past.digest)};
  if (!past.date)
    return scope.say("issued.past-undated", {issue, digest});
  return scope.say("issued.past", {issue, {"date", date(scope, *past.date)}, digest});
}

Inlines recipient_words(const Scope &scope, const survey::Recipient &recipient) {
  const Inlines who = prose(scope, recipient.who.text);
  return recipient.how.given() ? who + plain(scope.say("voice.list-between")) + prose(scope, recipient.how.text) : who;
}

std::optional<content::Block> replaces_notice(const Scope &scope) {
  const auto *amended = scope.source.amended;
  if (amended == nullptr)
    return std::nullopt;
  const std::string changed =
      amended->changes.decision_changed() ? scope.say_computed("issued.decision-changed") : scope.say_computed("issued.no-decision-changed");
  return paragraph(scope.tell("issued.notice", {{"issue", plain(std::to_string(scope.survey().report.issue))},
                                                {"past", plain(past_issue_words(scope, amended->replaces))},
                                                {"changed", content::strong(changed)},
                                                {"page", page_link(section_id("changes"))}}),
                   look::issue_notice);
}

Inlines end_words(const Scope &scope) {
  if (!issued(scope))
    return scope.tell("document.end");
  const auto &report = scope.survey().report;
  return scope.tell("issued.end", {{"number", plain(report.number.text)},
                                   {"issue", plain(std::to_string(report.issue))},
                                   {"digest", plain(scope.source.issued_digest)}});
}

} // namespace strakebook::compose
