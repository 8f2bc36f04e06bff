#include "strakebook/base/text.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

struct Judged {
  const survey::Decision &decision;
  const assess::ZoneResult &zone;
  const policy::Action *action; ///< nullptr: not one of the house's
};

bool adverse(const Judged &judged) { return judged.action && judged.action->adverse; }

std::string action_name(const Judged &judged) { return judged.action ? judged.action->name : judged.decision.action; }

/// What stands in the place of a governing criterion is wrong, or nothing does where something must.
std::string wrong_criterion(const Subject &subject, const Judged &judged) {
  const std::string &id = judged.decision.criterion;
  if (id.empty()) return adverse(judged) ? "criterion" : "";
  if (!criterion_in_use(subject.assessment, id)) return "a criterion that this survey uses (" + id + " is none)";
  return applicable(subject, judged.zone, id) ? "" : "a criterion that applies to this zone (" + id + " does not)";
}

/// A place of the zone that is too close to a limit to call; nullptr: none is.
const assess::Subject *close_call(const assess::ZoneResult &zone) {
  for (const assess::Subject &place : zone.subjects)
    for (const assess::CriterionResult &result : place.results)
      if (result.verdict == assess::Verdict::too_close) return &place;
  return nullptr;
}

/// Where a decision is adverse, or could as well have fallen the other way, others may see it otherwise.
void check_range(Findings &found, const Subject &subject, const Judged &judged) {
  const assess::Subject *close = close_call(judged.zone);
  if (!adverse(judged) && !close) return;
  std::vector<std::string> lacks;
  if (!judged.decision.range_of_opinion.given()) lacks.push_back("others-may-say");
  if (!judged.decision.would_change.given()) lacks.push_back("would-change");
  if (lacks.empty()) return;
  const std::string why = adverse(judged) ? "the decision \"" + action_name(judged) + "\" is adverse"
                                          : "a limit is too close to call at " + close->id;
  found.push_back({base::Code::decision_incomplete, nearest(judged.decision.span, subject.survey.span),
                   "zone " + judged.zone.zone + ": " + why + ", and the decision lacks " + listed(lacks),
                   "the other tenable view, and what would change this one",
                   "under decisions: " + judged.zone.zone + ":\n  others-may-say: the other view\n  would-change: what would"});
}

void check_complete(Findings &found, const Subject &subject, const Judged &judged) {
  std::vector<std::string> lacks;
  if (auto criterion = wrong_criterion(subject, judged); !criterion.empty()) lacks.push_back(std::move(criterion));
  if (adverse(judged)) {
    if (!judged.decision.why.given()) lacks.push_back("why");
    if (judged.decision.evidence.empty()) lacks.push_back("evidence");
    if (judged.decision.instead_of.empty()) lacks.push_back("instead-of");
  }
  if (lacks.empty()) return;
  found.push_back({base::Code::decision_incomplete, nearest(judged.decision.span, subject.survey.span),
                   "zone " + judged.zone.zone + ": the decision \"" + action_name(judged) + "\" lacks " + listed(lacks),
                   "with an adverse decision its criterion, its reason, its evidence and what else was considered",
                   "under decisions: " + judged.zone.zone +
                       ":\n  criterion: one of the criteria in use\n  why: the reason\n  evidence: [" +
                       (judged.zone.worst_pit ? *judged.zone.worst_pit : judged.zone.worst) +
                       "]\n  instead-of: {another action: why not}"});
}

void check_departure(Findings &found, const Subject &subject, const Judged &judged) {
  if (!judged.zone.departs || judged.decision.departure.given()) return;
  found.push_back({base::Code::departure_unreasoned, nearest(judged.decision.span, subject.survey.span),
                   "zone " + judged.zone.zone + ": the decision \"" + action_name(judged) +
                       "\" is not what the house's ladder suggests, and no reason is given",
                   "one of: " + base::joined(judged.zone.suggested, ", ") + "; or a reason for departing from it",
                   "departure: why the ladder is not followed here"});
}

void check_few(Findings &found, const Subject &subject, const Judged &judged) {
  const bool has_opinion = judged.decision.action != policy::no_opinion;
  if (!judged.zone.too_few || !has_opinion || judged.decision.opinion_on_few.given()) return;
  const auto &count = judged.zone.count;
  found.push_back({base::Code::no_opinion_required, nearest(judged.decision.span, subject.survey.span),
                   "zone " + judged.zone.zone + ": " + std::to_string(count.read) + " of " + std::to_string(count.planned) +
                       " marks were read, " + std::to_string(count.used) + " of use, too few for the opinion \"" +
                       action_name(judged) + "\"",
                   "at least " + std::to_string(subject.policy.least_marks) + " marks of use, and read of the marks planned " +
                       std::to_string(subject.policy.least_read.num) + "/" +
                       std::to_string(subject.policy.least_read.den) + " or more",
                   "action: " + std::string(policy::no_opinion) +
                       "\nor, beside the action, opinion-on-few: why an opinion is given on so few"});
}

} // namespace

Findings decisions(const Subject &subject) {
  Findings found;
  for (const assess::ZoneResult &zone : subject.assessment.zones) {
    const survey::Decision *decision = decision_of(subject.survey, zone.zone);
    if (!decision) continue;
    const auto action = subject.policy.actions.find(decision->action);
    const Judged judged{*decision, zone, action == subject.policy.actions.end() ? nullptr : &action->second};
    check_complete(found, subject, judged);
    check_range(found, subject, judged);
    check_departure(found, subject, judged);
    check_few(found, subject, judged);
  }
  return found;
}

} // namespace strakebook::review
