#include <algorithm>

#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

/// Class C is "at next maintenance": that is its deadline.
constexpr std::string_view dated_by_itself = "C";

bool adverse(const policy::Policy &policy, const std::string &action) {
  const auto found = policy.actions.find(action);
  return found != policy.actions.end() && found->second.adverse;
}

std::vector<std::string> lacking(const survey::Recommendation &item, bool is_adverse) {
  std::vector<std::string> lacks;
  if (item.klass.empty()) lacks.push_back("class");
  if (item.klass != dated_by_itself && !item.deadline.given() && !item.by) lacks.push_back("deadline or by");
  if (!item.reason.given()) lacks.push_back("reason");
  if (!item.feasible.given()) lacks.push_back("feasible");
  if (!item.proof.given()) lacks.push_back("proof");
  if (is_adverse && !item.alternative.given()) lacks.push_back("alternative");
  if (is_adverse && item.evidence.empty()) lacks.push_back("evidence");
  return lacks;
}

} // namespace

Findings recommendations(const Subject &subject) {
  Findings found;
  for (const survey::Recommendation &item : subject.survey.recommendations) {
    const auto lacks = lacking(item, adverse(subject.policy, item.action));
    if (lacks.empty()) continue;
    found.push_back({base::Code::recommendation_incomplete, nearest(item.span, subject.survey.span),
                     "recommendation " + item.id + " lacks " + listed(lacks),
                     "class A, B or C; for A and B a deadline; the reason; whether it can be done; what proves it done",
                     "class: B\nby: 2027-04-30\nreason: why, with the marks\nfeasible: how it can be done\nproof: what "
                     "shows that it was done"});
  }
  for (const survey::SteelworkItem &item : subject.survey.steelwork) {
    const auto &all = subject.survey.recommendations;
    const auto of = std::ranges::find(all, item.recommendation, &survey::Recommendation::id);
    if (of == all.end() || of->action == item.action) continue;
    found.push_back({base::Code::recommendation_incomplete, nearest(item.span, subject.survey.span),
                     "schedule item " + item.id + " is \"" + item.action + "\", but its recommendation " + of->id + " is \"" + of->action + "\"",
                     "the action that the recommendation names", "action: " + of->action});
  }
  return found;
}

} // namespace strakebook::review
