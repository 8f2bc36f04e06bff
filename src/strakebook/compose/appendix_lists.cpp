#include "strakebook/compose/appendix_lists.h"

#include <algorithm>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/thickness.h"
#include "strakebook/compose/wastage.h"

namespace strakebook::compose {

using content::plain;

namespace {

std::string reason_of(const Scope &scope, const survey::Mark &mark) {
  if (mark.status != survey::Status::read)
    return status_word(scope, mark.status);
  return scope.say("appendices.on-doubler");
}

std::string share_words(const Scope &scope, Ratio share) { return percent(scope, share); }

void add_tolerances(const Scope &scope, Entries &entries) {
  for (const auto &id : tolerances_in_use(scope)) {
    const auto &tolerance = scope.policy().tolerances.at(id);
    add(entries, id,
        plain(tolerance.verified ? tolerance.source
                                 : scope.say("appendices.from-memory", {{"source", tolerance.source}})));
  }
}

const survey::Acknowledgement *answer_for(const Scope &scope, const base::Diagnostic &warning) {
  const auto &all = scope.survey().acknowledgements;
  const auto found = std::ranges::find(all, warning.subject, &survey::Acknowledgement::subject);
  return found == all.end() ? nullptr : &*found;
}

} // namespace

std::vector<content::Block> exclusions(const Scope &scope, Numbering &numbering) {
  auto table =
      labelled_table(scope, numbering, look::small_table, scope.tell("appendices.exclusions-caption"),
                     {column(scope.say("appendices.mark")), column(scope.say("appendices.reason")),
                      stretching(scope.say("appendices.remark"))});
  std::vector<content::Row> rows;
  for (const auto &result : scope.assessment().marks) {
    if (result.used)
      continue;
    const auto &mark = scope.survey().marks.at(result.mark);
    rows.push_back(
        row({cell(link(mark_id(mark.id()), tied_mark(mark.id()))), cell(reason_of(scope, mark)),
             cell(mark.why.given() ? prose(scope, mark.why.text) : plain(scope.say("voice.dash")))},
            {}, mark.span));
  }
  if (rows.empty())
    return {paragraph(plain(scope.say("appendices.no-exclusions")), look::text)};
  add_rows(table, std::move(rows));
  return {item_heading(scope.say("appendices.exclusions")), block(std::move(table), "table/exclusions")};
}

std::vector<content::Block> acknowledged(const Scope &scope, Numbering &numbering) {
  auto table =
      labelled_table(scope, numbering, look::small_table, scope.tell("appendices.acknowledged-caption"),
                     {column(scope.say("appendices.subject")), stretching(scope.say("appendices.warning")),
                      stretching(scope.say("appendices.answer"))});
  std::vector<content::Row> rows;
  for (const auto &found : scope.source.findings.all()) {
    if (found.severity != base::Severity::warning || found.subject.empty())
      continue;
    const auto *answer = answer_for(scope, found);
    rows.push_back(row({cell(found.subject), cell(found.message),
                        cell(answer == nullptr ? not_given(scope) : prose(scope, answer->reason.text))},
                       {}, found.span));
  }
  if (rows.empty())
    return {paragraph(plain(scope.say("appendices.no-warnings")), look::text)};
  add_rows(table, std::move(rows));
  return {item_heading(scope.say("appendices.acknowledged")), block(std::move(table), "table/acknowledged")};
}

namespace {

std::string rule_in_short(const Scope &scope) {
  const auto &doubt = scope.policy().decision;
  if (doubt.kind == policy::DecisionKind::simple_acceptance)
    return scope.say("appendices.rule-simple-text", {{"rule", doubt.name}, {"source", doubt.source}});
  return scope.say("appendices.rule-doubt-text",
                   {{"rule", doubt.name}, {"band", figure(doubt.band)}, {"coverage", percent(scope, doubt.coverage)},
                    {"source", doubt.source}});
}

bool by_single_echo(const survey::Mark &mark) { return mark.surface == survey::Surface::coated_single_echo; }

std::string copying_words(const Scope &scope) {
  const auto &checks = scope.policy().copying;
  return scope.say("appendices.rule-copying-text",
                   {{"agree", unit_mm(scope, base::mm_exact(checks.agree, 1))},
                    {"mirror", unit_mm(scope, base::mm_exact(checks.mirror_apart, 1))},
                    {"run", std::to_string(checks.run_marks)},
                    {"odds", std::to_string(checks.run_odds)},
                    {"apart", unit_mm(scope, base::mm_exact(checks.shift_apart, 1))},
                    {"stations", std::to_string(checks.shift_marks)},
                    {"part", share_words(scope, checks.shift_part)},
                    {"pit", share_words(scope, checks.pit_share)},
                    {"unit", share_words(scope, checks.unit_share)},
                    {"source", checks.source}});
}

/// How the extent of pitting is told, and when the deepest pits are measured.
void add_pitting_rule(const Scope &scope, Entries &entries) {
  const auto &policy = scope.policy();
  const std::string intense = tied(figure(policy.pitting.intense_over_percent), scope.say("voice.percent"));
  add(entries, scope.say("appendices.rule-extent"),
      scope.tell("appendices.rule-extent-text", {{"rule", plain(extent_rule(scope))},
                                                 {"least", plain(std::to_string(policy.pitting.least_measured))},
                                                 {"over", plain(intense)},
                                                 {"source", plain(policy.pitting.source)}}));
}

void add_years_rule(const Scope &scope, Entries &entries) {
  const auto &rule = scope.policy().years;
  add(entries, scope.say("comparison.rule"),
      plain(scope.say("comparison.rule-text", {{"radius", unit_mm(scope, base::mm_exact(rule.match_radius, 0))},
                                               {"part", share_words(scope, rule.life_part)},
                                               {"months", std::to_string(rule.longest_months)},
                                               {"source", rule.source}})));
}

} // namespace

content::Block rules_used(const Scope &scope) {
  const auto &policy = scope.policy();
  Entries entries;
  add(entries, scope.say("appendices.rule-doubt"), plain(rule_in_short(scope)));
  add(entries, scope.say("appendices.rule-few"),
      plain(scope.say("appendices.rule-few-text", {{"marks", std::to_string(policy.least_marks)},
                                                   {"share", share_words(scope, policy.least_read)}})));
  add(entries, scope.say("appendices.rule-ladder"), plain(policy.ladder.source));
  add(entries, scope.say("appendices.rule-spot"),
      plain(scope.say("appendices.rule-spot-text", {{"n", figure(policy.spot_check_per_m2)}})));
  if (!scope.survey().pits.empty())
    add_pitting_rule(scope, entries);
  if (!scope.survey().earlier.empty())
    add_years_rule(scope, entries);
  add(entries, scope.say("appendices.rule-copying"), plain(copying_words(scope)));
  add(entries, scope.say("appendices.rule-repeats"),
      plain(unit_mm(scope, base::mm_exact(policy.repeat_spread, 1))));
  add(entries, scope.say("appendices.rule-jump"),
      plain(unit_mm(scope, base::mm_exact(policy.neighbour_jump, 1))));
  add(entries, scope.say("appendices.rule-block"),
      plain(unit_mm(scope, base::mm_exact(policy.block_agreement, 1))));
  if (std::ranges::any_of(scope.assessment().gauges, &assess::GaugeResult::indicative))
    add(entries, scope.say("appendices.rule-retake"),
        plain(unit_mm(scope, base::mm_exact(policy.retake_within, 1))));
  if (std::ranges::any_of(scope.survey().marks, by_single_echo))
    add(entries, scope.say("appendices.rule-single-echo"),
        plain(scope.say("appendices.rule-single-echo-text",
                        {{"least", figure(policy.single_echo.least)}, {"most", figure(policy.single_echo.most)}})));
  if (!scope.survey().photos.empty()) {
    const auto &photographs = scope.source.house.style.photographs;
    add(entries, scope.say("appendices.rule-photographs"),
        plain(scope.say("appendices.rule-photographs-text", {{"resolution", std::to_string(photographs.per_inch)},
                                                             {"quality", std::to_string(photographs.quality)}})));
  }
  add_works_rule(scope, entries);
  add_tolerances(scope, entries);
  add_defaults(scope, entries);
  return keys(std::move(entries), look::plain_keys, 2);
}

} // namespace strakebook::compose
