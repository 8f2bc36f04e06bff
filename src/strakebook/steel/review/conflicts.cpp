#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

std::vector<std::string> names_of(const Subject &subject, const std::vector<std::string> &ids) {
  std::vector<std::string> names;
  for (const std::string &id : ids) {
    const auto *criterion = criterion_in_use(subject.assessment, id);
    names.push_back(criterion ? criterion->name : id);
  }
  return names;
}

std::string remaining_at(const assess::ZoneResult &zone) {
  for (const assess::Subject &place : zone.subjects)
    if (place.id == zone.conflict_at) return base::mm_exact(place.judged()) + (place.low ? " mm left on the low side" : " mm left");
  return {};
}

std::string how_to_answer(const assess::ZoneResult &zone) {
  std::vector<std::string> choices = zone.short_of;
  choices.insert(choices.end(), zone.met.begin(), zone.met.end());
  std::string either;
  for (const std::string &choice : choices) either += (either.empty() ? "" : " | ") + choice;
  return "decisions:\n  " + zone.zone + ":\n    conflict:\n      prefers: " + either + "\n      marks: [" + zone.conflict_at +
         "]\n      because: a full sentence that says why this criterion is preferred.";
}

Finding unanswered(const Subject &subject, const assess::ZoneResult &zone) {
  const survey::Zone *where = survey::zone_of(subject.survey, zone.zone);
  const survey::Decision *decision = decision_of(subject.survey, zone.zone);
  const base::SourceSpan &parent = where ? nearest(where->span, subject.survey.span) : subject.survey.span;
  return {base::Code::conflict_unanswered, decision ? nearest(decision->span, parent) : parent,
          "zone " + zone.zone + ": the criteria contradict each other at " + zone.conflict_at + ", " + remaining_at(zone) +
              ": it falls short of " + listed(names_of(subject, zone.short_of)) + " and meets " +
              listed(names_of(subject, zone.met)) + ", and no answer is given",
          "an answer: the criterion preferred, a mark or pit that it rests on, and a full sentence", how_to_answer(zone)};
}

bool in_zone(const survey::Survey &survey, const std::string &place, const std::string &zone) {
  const auto *mark = survey::mark_of(survey, place);
  const auto *pit = survey::pit_of(survey, place);
  if (mark == nullptr && pit == nullptr) return false;
  return survey::zone_of_row(survey, mark != nullptr ? mark->row : pit->at.row).id == zone;
}

std::vector<std::string> wrong_with(const Subject &subject, const assess::ZoneResult &zone,
                                    const survey::ConflictAnswer &answer) {
  std::vector<std::string> wrong;
  if (answer.prefers.empty()) wrong.push_back("no criterion is preferred");
  else if (!criterion_in_use(subject.assessment, answer.prefers))
    wrong.push_back(answer.prefers + " is not a criterion that this survey uses");
  else if (!applicable(subject, zone, answer.prefers)) wrong.push_back(answer.prefers + " does not apply to this zone");
  if (answer.marks.empty()) wrong.push_back("no mark is cited");
  for (const std::string &mark : answer.marks)
    if (!in_zone(subject.survey, mark, zone.zone)) wrong.push_back("there is no mark or pit " + mark + " in this zone");
  if (const auto *decision = decision_of(subject.survey, zone.zone);
      decision && !decision->criterion.empty() && !answer.prefers.empty() && decision->criterion != answer.prefers)
    wrong.push_back("it prefers " + answer.prefers + " while the decision is governed by " + decision->criterion);
  if (!full_sentence(answer.because.text)) wrong.push_back("the reason is not a full sentence");
  return wrong;
}

void check_answer(Findings &found, const Subject &subject, const assess::ZoneResult &zone,
                  const survey::Decision &decision) {
  const auto wrong = wrong_with(subject, zone, *decision.conflict);
  if (wrong.empty()) return;
  found.push_back({base::Code::answer_incomplete, nearest(decision.conflict->span, decision.span),
                   "zone " + zone.zone + ": the answer to the conflict is not complete: " + listed(wrong),
                   "a criterion in use, a mark or pit of this survey, and a sentence of four words or more with its full stop",
                   how_to_answer(zone)});
}

Finding to_nothing(const Subject &subject, const assess::ZoneResult &zone, const survey::Decision &decision) {
  return {base::Code::answer_to_nothing, nearest(decision.conflict->span, nearest(decision.span, subject.survey.span)),
          "zone " + zone.zone + ": a conflict is answered, and no criteria contradict each other there",
          "an answer only where one criterion is met and another is not", "leave conflict out; its reason may stand under why"};
}

} // namespace

Findings conflicts(const Subject &subject) {
  Findings found;
  for (const assess::ZoneResult &zone : subject.assessment.zones) {
    const survey::Decision *decision = decision_of(subject.survey, zone.zone);
    const bool answered = decision && decision->conflict;
    if (zone.conflict && answered) check_answer(found, subject, zone, *decision);
    else if (zone.conflict) found.push_back(unanswered(subject, zone));
    else if (answered) found.push_back(to_nothing(subject, zone, *decision));
  }
  return found;
}

} // namespace strakebook::review
