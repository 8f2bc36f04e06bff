#include <algorithm>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/assess/low_side.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

std::vector<std::string> wrong_with(const survey::Gauge &gauge, const assess::GaugeResult &result) {
  std::vector<std::string> wrong;
  if (result.lapsed)
    wrong.push_back("its certificate ran out on " + base::iso(gauge.certificate_until->value) + ", before the inspection");
  if (!result.checked) return wrong;
  if (!gauge.block) wrong.push_back("no block thickness is given");
  const auto look = [&](const assess::BlockCheck &check, const std::optional<base::Measured> &figure, const std::string &when) {
    if (!figure) wrong.push_back("the check " + when + " is missing");
    else if (check.state == assess::BlockCheck::State::differs)
      wrong.push_back("the check " + when + " shows " + figure->raw + " on the block of " + gauge.block->raw);
  };
  look(result.before, gauge.before, "before");
  look(result.after, gauge.after, "after");
  return wrong;
}

bool any_limitation_says(const survey::Survey &survey, auto said) {
  return std::ranges::any_of(survey.limitations, [&](const survey::Limitation &limitation) {
    return said(limitation.area.text) || said(limitation.why.text) || said(limitation.prevents.text);
  });
}

/// A limitation covers a gauge's failed check when its area, reason or effect names the gauge's id, or says "gauge".
bool covered(const survey::Survey &survey, const survey::Gauge &gauge) {
  return any_limitation_says(survey, [&](std::string_view text) { return says(text, gauge.id) || says(text, "gauge"); });
}

void check_gauge(Findings &found, const Subject &subject, const survey::Gauge &gauge, const assess::GaugeResult &result) {
  if (!result.indicative || covered(subject.survey, gauge)) return;
  found.push_back({base::Code::block_check_failed, nearest(gauge.span, subject.survey.span),
                   "gauge " + gauge.id + ": " + listed(wrong_with(gauge, result)) + ", and no limitation says so",
                   "block, before and after, both within " + base::mm_exact(subject.policy.block_agreement) +
                       " mm of the block, and a certificate that holds on the day of the inspection",
                   "block: 5.00\nbefore: 5.00\nafter: 5.01\nor a limitation whose area, why or prevents names gauge " + gauge.id});
}

/// A limitation covers single echoes when its area, reason or effect speaks of a single echo.
void check_single_echoes(Findings &found, const Subject &subject) {
  const auto &marks = subject.assessment.marks;
  const auto open = [&](const assess::MarkResult &mark) {
    return mark.used && assess::open_single_echo(subject.survey.marks[mark.mark]);
  };
  const auto count = std::ranges::count_if(marks, open);
  const bool said = any_limitation_says(subject.survey, [](std::string_view text) {
    return text.find("single echo") != text.npos || text.find("single-echo") != text.npos;
  });
  if (count == 0 || said) return;
  const survey::Mark &first = subject.survey.marks[std::ranges::find_if(marks, open)->mark];
  found.push_back({base::Code::single_echo_open, nearest(first.span, subject.survey.span),
                   std::to_string(count) + (count == 1 ? " mark was" : " marks were") + " read single echo, " + first.id() +
                       " the first; no coating thickness is given, so the over-read cannot be estimated, and no limitation says so",
                   "the dry film thickness with its set of readings, or a limitation",
                   "coating-thickness: 300 um\nor a limitation whose area, why or prevents speaks of the single-echo readings"});
}

} // namespace

Findings instruments(const Subject &subject) {
  Findings found;
  for (std::size_t i = 0; i < subject.survey.gauges.size(); ++i)
    check_gauge(found, subject, subject.survey.gauges[i], subject.assessment.gauges[i]);
  check_single_echoes(found, subject);
  return found;
}

} // namespace strakebook::review
