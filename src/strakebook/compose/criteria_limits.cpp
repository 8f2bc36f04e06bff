#include <algorithm>

#include "strakebook/compose/criteria_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/told.h"

/// What each criterion asks for on this hull, zone by zone.
namespace strakebook::compose {

namespace {

struct Answer {
  std::string text; ///< a limit, or a reason
  bool applies = false;
  std::vector<std::string> zones;
};

Answer answer_in(const Scope &scope, const assess::Applicability &one) {
  if (one.limit) return {limit_text(*one.limit) + told_sign(scope, one.told), true, {}};
  return {why_not_words(scope, one.criterion, one.why_not), false, {}};
}

/// Zones with the same answer together, in the order of the zones; where it applies first.
std::vector<Answer> answers(const Scope &scope, const policy::Criterion &criterion) {
  std::vector<Answer> found;
  for (const auto &zone : scope.assessment().zones) {
    const auto one = std::ranges::find(zone.criteria, criterion.id, &assess::Applicability::criterion);
    Answer answer = answer_in(scope, *one);
    const auto same = std::ranges::find_if(
        found, [&](const Answer &other) { return other.applies == answer.applies && other.text == answer.text; });
    Answer &into = same == found.end() ? found.emplace_back(std::move(answer)) : *same;
    into.zones.push_back(zone_name(scope, zone.zone));
  }
  std::ranges::stable_partition(found, &Answer::applies);
  return found;
}

} // namespace

std::string limits_on_hull(const Scope &scope, const policy::Criterion &criterion) {
  const auto found = answers(scope, criterion);
  std::vector<std::string> parts;
  for (const Answer &answer : found) {
    const std::string zones = found.size() == 1 ? scope.say("criteria.every-zone") : join_and(scope, answer.zones);
    parts.push_back(answer.applies ? scope.say("criteria.limit", {{"zones", zones}, {"mm", answer.text}})
                                   : scope.say("criteria.not-applied", {{"zones", zones}, {"why", answer.text}}));
  }
  return base::joined(parts, scope.say("criteria.limit-between"));
}

std::string bound_words(const Scope &scope, const policy::Criterion &criterion) {
  std::string text;
  if (criterion.original_at_most)
    text += scope.say("criteria.only-thin", {{"mm", unit_mm(scope, base::mm_exact(*criterion.original_at_most, 1))}});
  if (criterion.declared == policy::Declaration::passengers) text += scope.say("criteria.only-passengers");
  if (criterion.declared == policy::Declaration::light_scantlings) text += scope.say("criteria.only-light-scantlings");
  return text;
}

} // namespace strakebook::compose
