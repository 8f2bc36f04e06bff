#include <algorithm>

#include "strakebook/base/decimal.h"
#include "strakebook/base/text.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

/// Gauges that read plate must have been checked; another only if it gives a block at all.
bool needs_check(const survey::Survey &survey, const survey::Gauge &gauge) {
  const auto read_with = [&](const survey::Mark &mark) { return mark.gauge == gauge.id; };
  return gauge.block || gauge.before || gauge.after || std::ranges::any_of(survey.marks, read_with);
}

Length apart(const base::Measured &figure, const base::Measured &block) {
  return figure.value < block.value ? block.value - figure.value : figure.value - block.value;
}

std::vector<std::string> wrong_with(const survey::Survey &survey, const survey::Gauge &gauge, Length agreement) {
  std::vector<std::string> wrong;
  const auto &inspected = survey.report.inspected;
  if (inspected && gauge.certificate_until && gauge.certificate_until->value < inspected->value)
    wrong.push_back("its certificate ran out on " + base::iso(gauge.certificate_until->value) + ", before the inspection");
  if (!gauge.block) wrong.push_back("no block thickness is given");
  const auto check = [&](const std::optional<base::Measured> &figure, const std::string &when) {
    if (!figure) wrong.push_back("the check " + when + " is missing");
    else if (gauge.block && apart(*figure, *gauge.block) > agreement)
      wrong.push_back("the check " + when + " shows " + figure->raw + " on the block of " + gauge.block->raw);
  };
  check(gauge.before, "before");
  check(gauge.after, "after");
  return wrong;
}

/// Names of things stand in prose with stops and commas about them.
bool says(std::string_view text, std::string_view word) {
  constexpr std::string_view around = ".,;:()\"'";
  return std::ranges::any_of(base::words(text), [&](std::string_view found) {
    while (!found.empty() && around.find(found.front()) != around.npos) found.remove_prefix(1);
    while (!found.empty() && around.find(found.back()) != around.npos) found.remove_suffix(1);
    return found == word;
  });
}

/// A limitation covers a gauge's failed check when its area, reason or effect names the gauge's id, or says "gauge".
bool covered(const survey::Survey &survey, const survey::Gauge &gauge) {
  return std::ranges::any_of(survey.limitations, [&](const survey::Limitation &limitation) {
    return std::ranges::any_of(std::vector{limitation.area, limitation.why, limitation.prevents}, [&](const auto &words) {
      return says(words.text, gauge.id) || says(words.text, "gauge");
    });
  });
}

} // namespace

Findings instruments(const Subject &subject) {
  Findings found;
  const Length agreement = subject.policy.block_agreement;
  for (const survey::Gauge &gauge : subject.survey.gauges) {
    if (!needs_check(subject.survey, gauge)) continue;
    const auto wrong = wrong_with(subject.survey, gauge, agreement);
    if (wrong.empty() || covered(subject.survey, gauge)) continue;
    found.push_back({base::Code::block_check_failed, nearest(gauge.span, subject.survey.span),
                     "gauge " + gauge.id + ": " + listed(wrong) + ", and no limitation says so",
                     "block, before and after, both within " + base::mm_exact(agreement) + " mm of the block",
                     "block: 5.00\nbefore: 5.00\nafter: 5.01\nor a limitation whose area, why or prevents names gauge " +
                         gauge.id});
  }
  return found;
}

} // namespace strakebook::review
