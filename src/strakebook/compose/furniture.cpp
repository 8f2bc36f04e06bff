#include "strakebook/compose/furniture.h"

#include "strakebook/compose/issue_words.h"

#include <algorithm>

namespace strakebook::compose {

using content::plain;

namespace {

bool is_draft(const Scope &scope) { return scope.survey().report.state == survey::State::draft; }

Inlines state_part(const Scope &scope) {
  if (is_draft(scope))
    return content::strong(scope.say("furniture.draft"));
  const auto &report = scope.survey().report;
  return content::strong(scope.say("furniture.issue-state", {{"issue", std::to_string(report.issue)},
                                                             {"state", state_word(scope, report.state)}}));
}

/// A pattern of the house with a place for a number: the page numbers are filled in when pages are known.
std::string with_page(const Scope &scope, std::string_view key) { return house::word(scope.wording(), key); }

std::string lacking(const Scope &scope, base::Code code) {
  switch (code) {
  case base::Code::required_missing:
  case base::Code::dates_disagree:
  case base::Code::reason_length:
  case base::Code::carried_unanswered:
  case base::Code::addendum_incomplete:
    return scope.say("furniture.lacks-required");
  case base::Code::conflict_unanswered:
  case base::Code::answer_incomplete:
  case base::Code::answer_to_nothing:
    return scope.say("furniture.lacks-conflict");
  case base::Code::decision_incomplete:
  case base::Code::claim_uncited:
    return scope.say("furniture.lacks-decision");
  case base::Code::departure_unreasoned:
    return scope.say("furniture.lacks-departure");
  case base::Code::no_opinion_required:
    return scope.say("furniture.lacks-few");
  case base::Code::block_check_failed:
    return scope.say("furniture.lacks-block");
  case base::Code::recommendation_incomplete:
    return scope.say("furniture.lacks-recommendation");
  case base::Code::warning_unacknowledged:
    return scope.say("furniture.lacks-acknowledgement");
  default:
    return {};
  }
}

std::string foot(const Scope &scope) {
  const auto &report = scope.survey().report;
  if (issued(scope))
    return scope.say("issued.foot", {{"date", report.issued ? date(scope, report.issued->value) : scope.say("voice.dash")},
                                     {"digest", untorn(scope.source.issued_digest)}});
  if (is_draft(scope)) {
    const auto left = outstanding(scope);
    if (left.empty())
      return scope.say("furniture.foot-draft");
    return scope.say("furniture.foot-outstanding",
                     {{"outstanding", base::joined(left, scope.say("voice.list-between"))}});
  }
  if (report.state == survey::State::preliminary)
    return scope.say("furniture.foot-preliminary");
  if (!report.issued)
    return scope.say("furniture.foot-undated");
  return scope.say("furniture.foot", {{"date", date(scope, report.issued->value)}});
}

/// The issue that this one replaces: by the register where it is known, else as the survey says.
Inlines supersedes(const Scope &scope) {
  if (const auto *amended = scope.source.amended)
    return scope.tell("issued.supersedes", {{"issue", plain(std::to_string(amended->replaces.issue))}});
  const auto &report = scope.survey().report;
  if (report.issue > 1 && report.supersedes.given())
    return scope.tell("furniture.supersedes", {{"what", plain(report.supersedes.text)}});
  return {};
}

} // namespace

std::vector<std::string> outstanding(const Scope &scope) {
  std::vector<std::string> out;
  for (const auto &found : scope.source.findings.all()) {
    const std::string words = lacking(scope, found.code);
    if (!words.empty() && std::ranges::find(out, words) == out.end())
      out.push_back(words);
  }
  return out;
}

content::Furniture furniture(const Scope &scope) {
  const auto &survey = scope.survey();
  content::Furniture out;
  out.head_left = scope.tell("furniture.head-left", {{"vessel", content::italic(survey.vessel.name.text)}});
  const InlineFill number{"number", plain(survey.report.number.text)}, state{"state", state_part(scope)};
  out.head_right = issued(scope) ? scope.tell("issued.head-right", {number, state}) : scope.tell("furniture.head-right", {number, state});
  const Inlines more = supersedes(scope);
  out.head_right.insert(out.head_right.end(), more.begin(), more.end());
  out.foot_left = plain(foot(scope));
  out.foot_right = with_page(scope, "labels.foot");
  return out;
}

content::Labels labels(const Scope &scope) {
  return {.page_short = with_page(scope, "labels.page-short"),
          .label_page = with_page(scope, "labels.label-page"),
          .continued_from = with_page(scope, "labels.continued-from"),
          .continued_on = with_page(scope, "labels.continued-on"),
          .continued = with_page(scope, "labels.continued")};
}

} // namespace strakebook::compose
