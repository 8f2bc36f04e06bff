#include <algorithm>

#include "strakebook/steel/review/figures_quoted.h"
#include "strakebook/steel/review/findings.h"

/// What statements and claims rest on: what they cite, and whether the figures they quote are those of the file.
namespace strakebook::review {

namespace {

using survey::Target;

/// Does the text lead to something that was measured or seen?
bool cites(const survey::Survey &survey, std::string_view text) {
  constexpr Target evidence[] = {Target::mark, Target::pit, Target::photo, Target::note, Target::doubler};
  return std::ranges::any_of(survey::scan_pointers(survey, text), [&](const survey::FoundPointer &found) {
    return found.leads && std::ranges::find(evidence, found.target) != std::end(evidence);
  });
}

void check_evidence(Findings &found, const Subject &subject, const std::string &what, const std::string &action,
                    const std::vector<std::string> &evidence, const base::SourceSpan &span) {
  const auto known = subject.policy.actions.find(action);
  const bool adverse = known != subject.policy.actions.end() && known->second.adverse;
  const auto leads = [&](const std::string &one) { return cites(subject.survey, one); };
  if (!adverse || evidence.empty() || std::ranges::any_of(evidence, leads)) return; // none at all is said elsewhere
  found.push_back({base::Code::claim_uncited, nearest(span, subject.survey.span),
                   what + ": the evidence of \"" + action + "\" names nothing that was measured or seen",
                   "a mark, a pit, a photo or a note among the evidence", "evidence: [PW 9, P3, photo 4]"});
}

bool measured(const survey::Statement &fact) { return fact.kind == survey::StatementKind::measured; }

/// A figure that a text may give for a place, to the digits that it gives.
class Known {
public:
  Known(const Subject &subject, const survey::FoundPointer &place) : survey_(subject.survey), assessment_(subject.assessment) {
    if (place.target == Target::mark) see_mark(place.id);
    else see_pit(place.id);
    for (const auto &known : subject.outlook.history.places)
      if (known.id == place.id) see_earlier(known);
  }

  bool has(const base::Decimal &figure) const {
    return std::ranges::any_of(lengths_, [&](Length length) { return base::parse_decimal(base::mm_text(length, figure.places)) == figure; });
  }
  const std::string &as_noted() const { return noted_; }

private:
  void see_mark(const std::string &id) {
    const survey::Mark &mark = *survey::mark_of(survey_, id);
    for (const auto &repeat : mark.repeats) note(repeat);
    for (const auto &doubler : survey_.doublers) // the plate behind it, read from inside at the same place
      if (const auto &inner = doubler.from_inside; inner && inner->at.row == mark.row && inner->at.station.value == mark.station.value)
        note(inner->reading);
    const auto &result = assessment_.marks[static_cast<std::size_t>(&mark - survey_.marks.data())];
    if (result.used) see_derived(mark.row, result.remaining);
  }
  void see_pit(const std::string &id) {
    const survey::Pit &pit = *survey::pit_of(survey_, id);
    for (const auto &figure : {pit.adjacent, pit.depth}) note(figure);
    if (pit.across) note(*pit.across);
    const auto &result = assessment_.pits[static_cast<std::size_t>(&pit - survey_.pits.data())];
    if (result.doubler.empty()) see_derived(pit.at.row, result.remaining);
    else lengths_.push_back(result.remaining); // in the outer plate: no loss of the hull, and no limit
  }
  /// What is left, what is gone, and what is in hand or lacking against the limits. Not the limits: a slip may land on one.
  void see_derived(const std::string &row, Length remaining) {
    const survey::Zone &zone = survey::zone_of_row(survey_, row);
    lengths_.insert(lengths_.end(), {remaining, zone.original.nominal.value - remaining});
    for (const auto &place : assess::zone_result(assessment_, zone.id).subjects)
      for (const auto &result : place.results)
        lengths_.insert(lengths_.end(), {remaining - result.limit, result.limit - remaining});
  }
  /// What earlier surveys had there, and what has gone since.
  void see_earlier(const years::Place &place) {
    for (const auto &earlier : place.earlier) lengths_.insert(lengths_.end(), {earlier.remaining, earlier.remaining - place.judged()});
  }
  void note(const base::Measured &figure) {
    lengths_.push_back(figure.value);
    noted_ += (noted_.empty() ? "" : ", ") + figure.raw;
  }

  const survey::Survey &survey_;
  const assess::Assessment &assessment_;
  std::vector<Length> lengths_;
  std::string noted_;
};

/// Figures told one for one with the places are held against each its own, else against any of the places.
bool right(const Subject &subject, const Quoted &quoted, std::size_t figure) {
  if (quoted.places.size() == quoted.figures.size()) return Known(subject, quoted.places[figure]).has(quoted.figures[figure]);
  return std::ranges::any_of(quoted.places, [&](const auto &place) { return Known(subject, place).has(quoted.figures[figure]); });
}

Finding misquoted(const Subject &subject, const survey::Words &words, const Quoted &quoted, std::size_t figure) {
  const auto &place = quoted.places[std::min(figure, quoted.places.size() - 1)];
  const std::string noted = Known(subject, place).as_noted();
  return to_acknowledge(base::Code::figure_misquoted, nearest(words.span, subject.survey.span), "figure-of " + place.id,
                        "a measured statement gives " + base::to_text(quoted.figures[figure]) + " for " + place.id + ", where " +
                            (noted.empty() ? "no figure was noted" : "the figures noted are " + noted),
                        "a figure noted there, or what is computed from it");
}

} // namespace

Findings citations(const Subject &subject) {
  Findings found;
  for (const survey::Decision &decision : subject.survey.decisions) {
    check_evidence(found, subject, "zone " + decision.zone, decision.action, decision.evidence, decision.span);
    for (const survey::Statement &fact : decision.facts)
      if (measured(fact) && !cites(subject.survey, fact.text.text))
        found.push_back({base::Code::claim_uncited, nearest(fact.text.span, nearest(decision.span, subject.survey.span)),
                         "zone " + decision.zone + ": \"" + fact.text.text + "\" is called measured, and does not say where",
                         "a mark, a pit, a photo or a note in the statement",
                         "the place it was measured at, such as PW 9 or P3; or another kind of statement"});
  }
  for (const survey::Recommendation &item : subject.survey.recommendations)
    check_evidence(found, subject, "recommendation " + item.id, item.action, item.evidence, item.span);
  return found;
}

Findings figures_misquoted(const Subject &subject) {
  Findings found;
  const policy::Prose &prose = subject.policy.prose;
  for (const survey::Decision &decision : subject.survey.decisions)
    for (const survey::Statement &fact : decision.facts) {
      if (!measured(fact)) continue;
      for (const auto sentence : sentences(fact.text.text, prose.abbreviations))
        for (const Quoted &quoted : figures_quoted(subject.survey, sentence, prose.bounds))
          for (std::size_t i = 0; i < quoted.figures.size(); ++i)
            if (!right(subject, quoted, i)) found.push_back(misquoted(subject, fact.text, quoted, i));
    }
  return found;
}

} // namespace strakebook::review
