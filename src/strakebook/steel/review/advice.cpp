#include <algorithm>

#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

constexpr std::string_view before_use = "A"; ///< class of a recommendation
constexpr std::string_view without_conditions = "yes";

void refuse(Findings &found, const Subject &subject, std::string why, std::string expected) {
  const survey::Words &refloat = subject.survey.answer.refloat;
  found.push_back({base::Code::decision_incomplete, nearest(refloat.span, subject.survey.span),
                   "the refloat advice is \"" + refloat.text + "\", but " + std::move(why), std::move(expected),
                   "refloat: with conditions\nrefloat-conditions: what has to be done first"});
}

bool forbids(const policy::Policy &policy, const survey::Decision &decision) {
  const auto &rungs = policy.ladder.rungs;
  const auto &unsafe = rungs.front(); // the thinnest rung suggests the action that keeps the boat ashore
  return std::ranges::find(unsafe.isolated, decision.action) != unsafe.isolated.end() &&
         std::ranges::find(unsafe.extensive, decision.action) != unsafe.extensive.end();
}

} // namespace

Findings advice(const Subject &subject) {
  Findings found;
  if (subject.survey.answer.refloat.text != without_conditions) return found;
  for (const survey::Decision &decision : subject.survey.decisions)
    if (!subject.policy.ladder.rungs.empty() && forbids(subject.policy, decision))
      refuse(found, subject, "zone " + decision.zone + " is decided \"" + decision.action + "\"", "no, or with conditions");
  for (const survey::Recommendation &item : subject.survey.recommendations)
    if (item.klass == before_use)
      refuse(found, subject, "recommendation " + item.id + " is class A, before use", "with conditions, naming the item");
  if (const auto &out = subject.survey.conditions.out_of_water; out && !out->value)
    refuse(found, subject, "the boat was not out of the water", "not applicable, or no opinion");
  return found;
}

} // namespace strakebook::review
