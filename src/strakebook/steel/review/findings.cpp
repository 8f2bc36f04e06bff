#include "strakebook/steel/review/findings.h"

#include <algorithm>

#include "strakebook/base/text.h"

namespace strakebook::review {

const base::SourceSpan &nearest(const base::SourceSpan &span, const base::SourceSpan &parent) {
  return span.line > 0 ? span : parent;
}

std::string listed(const std::vector<std::string> &parts) {
  if (parts.size() < 2) return base::joined(parts, "");
  const std::vector<std::string> first(parts.begin(), parts.end() - 1);
  return base::joined(first, ", ") + " and " + parts.back();
}

bool full_sentence(std::string_view text) {
  constexpr std::size_t fewest_words = 4;
  const auto words = base::words(text);
  return words.size() >= fewest_words && words.back().ends_with('.');
}

const survey::Decision *decision_of(const survey::Survey &survey, std::string_view zone) {
  const auto found = std::ranges::find(survey.decisions, zone, &survey::Decision::zone);
  return found == survey.decisions.end() ? nullptr : &*found;
}

const policy::Criterion *criterion_in_use(const assess::Assessment &assessment, std::string_view id) {
  const auto found = std::ranges::find(assessment.criteria, id, &policy::Criterion::id);
  return found == assessment.criteria.end() ? nullptr : &*found;
}

bool applicable(const Subject &subject, const assess::ZoneResult &zone, std::string_view criterion) {
  if (!criterion_in_use(subject.assessment, criterion)) return false;
  return std::ranges::all_of(zone.subjects, [&](const assess::Subject &place) {
    return std::ranges::none_of(place.results, [&](const assess::CriterionResult &result) {
      return result.criterion == criterion && result.verdict == assess::Verdict::not_applicable;
    });
  });
}

} // namespace strakebook::review
