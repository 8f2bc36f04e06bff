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

bool says(std::string_view text, std::string_view word) {
  constexpr std::string_view around = ".,;:()\"'";
  const auto same = [&](std::string_view found) {
    if (found.size() != word.size() || found.empty()) return false;
    const char first = found.front() >= 'A' && found.front() <= 'Z' ? static_cast<char>(found.front() - 'A' + 'a') : found.front();
    return found == word || (first == word.front() && found.substr(1) == word.substr(1));
  };
  return std::ranges::any_of(base::words(text), [&](std::string_view found) {
    while (!found.empty() && around.find(found.front()) != around.npos) found.remove_prefix(1);
    while (!found.empty() && around.find(found.back()) != around.npos) found.remove_suffix(1);
    return same(found);
  });
}

Finding to_acknowledge(base::Code code, const base::SourceSpan &span, std::string subject, std::string message,
                       std::string expected) {
  std::string write = "acknowledged:\n  " + subject + ": why it stands";
  return {code, span, std::move(message), std::move(expected), std::move(write), std::move(subject)};
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
