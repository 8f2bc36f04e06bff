#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

std::string mm(Length length) { return base::mm_exact(length); }

std::string some_of(const std::vector<std::string> &places) {
  const std::string first = places.front();
  return places.size() == 1 ? first : first + " and " + std::to_string(places.size() - 1) + " more";
}

/// Its zero is known less nearly than places are told apart by.
void zero_is_near(Findings &found, const Subject &subject, const survey::EarlierSurvey &earlier) {
  const auto &within = earlier.datum.zero_within;
  const Length radius = subject.policy.years.match_radius;
  if (!within || within->value <= radius) return;
  found.push_back(to_acknowledge(base::Code::earlier_datum, nearest(earlier.datum.span, earlier.span), "earlier-zero " + earlier.id,
                                 "where " + earlier.id + " counts from is known within " + mm(within->value) +
                                     " mm, and places no further apart than " + mm(radius) + " mm are taken as the same",
                                 "a zero known within " + mm(radius) + " mm"));
}

void lies_on_the_hull(Findings &found, const survey::EarlierSurvey &earlier, const years::Compared &compared) {
  if (!compared.beyond.empty())
    found.push_back(to_acknowledge(base::Code::earlier_beyond, nearest(earlier.datum.span, earlier.span), "earlier-beyond " + earlier.id,
                                   some_of(compared.beyond) + " of " + earlier.id + " would lie off the hull",
                                   "a datum by which its places lie on the hull: its zero, and the direction in which it counts"));
  const bool seen = compared.matched > 0 || !compared.unmatched.empty();
  if (seen && compared.matched == 0)
    found.push_back(to_acknowledge(base::Code::earlier_apart, nearest(earlier.datum.span, earlier.span), "earlier-apart " + earlier.id,
                                   "no place of " + earlier.id + " lies where one of this survey does",
                                   "places in common: its zero, its direction and what it counts in"));
}

void has_not_grown(Findings &found, const Subject &subject, const years::Place &place) {
  if (place.change != years::Change::grown) return;
  const auto &was = years::grown_since(place);
  const auto *mark = survey::mark_of(subject.survey, place.id);
  const auto *pit = survey::pit_of(subject.survey, place.id);
  const base::SourceSpan nowhere{};
  found.push_back(to_acknowledge(base::Code::place_grown, nearest(mark ? mark->span : pit ? pit->span : nowhere, subject.survey.span),
                                 "grown " + place.id,
                                 place.id + " is " + mm(place.judged() - was.remaining) + " mm thicker than " + was.survey + " had it, beyond the doubt of both",
                                 "a figure that corrosion explains: look at both readings, their place, their unit and the plate"));
}

void next_look_is_in_time(Findings &found, const Subject &subject) {
  const auto &look = subject.outlook.history.next_look;
  const auto &named = subject.survey.answer.next_survey_by;
  if (!look || !named || named->value <= look->date) return;
  const std::string by = look->capped ? "the longest interval of this house" : "the life that is left at " + look->at;
  found.push_back(to_acknowledge(base::Code::next_look_late, nearest(named->span, subject.survey.span), "next-look",
                                 "the next survey, by " + base::iso(named->value) + ", is later than " + by + " allows",
                                 base::iso(look->date) + " at the latest"));
}

} // namespace

Findings earlier_surveys(const Subject &subject) {
  Findings found;
  const auto &history = subject.outlook.history;
  for (std::size_t i = 0; i < history.surveys.size(); ++i) {
    zero_is_near(found, subject, subject.survey.earlier[i]);
    lies_on_the_hull(found, subject.survey.earlier[i], history.surveys[i]);
  }
  for (const auto &place : history.places) has_not_grown(found, subject, place);
  next_look_is_in_time(found, subject);
  return found;
}

} // namespace strakebook::review
