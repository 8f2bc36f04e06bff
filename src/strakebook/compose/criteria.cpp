#include "strakebook/compose/chapters.h"
#include "strakebook/compose/criteria_parts.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"

/// Criteria: every limit a reader might apply, with its authority; how nearness is judged.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

content::Cell reason_cell(const Scope &scope, const policy::Criterion &criterion) {
  for (const auto &use : scope.survey().criteria)
    if (use.id == criterion.id)
      return cell(scope.tell("criteria.asked", {{"who", answer_to(scope, use.asked_by)}, {"why", answer_to(scope, use.why)}}));
  return criterion.asked_by.empty() ? cell(not_given(scope)) : cell(criterion.asked_by);
}

/// How a figure near its limit is judged, as the house's rule has it.
std::string decision_words(const Scope &scope) {
  const auto &rule = scope.policy().decision;
  const base::Fill name{"rule", rule.name}, source{"source", rule.source}, band{"band", figure(rule.band)};
  switch (rule.kind) {
  case policy::DecisionKind::simple_acceptance: return scope.say("criteria.simple-acceptance", {name, source});
  case policy::DecisionKind::guard_band: return scope.say("criteria.guard-band", {name, band, source});
  case policy::DecisionKind::four_classes: return scope.say("criteria.four-classes", {name, band, source});
  }
  return {};
}

content::Block criteria_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, "plain", scope.tell("criteria.caption"),
                              {column(scope.say("criteria.name")), stretching(scope.say("criteria.limits")),
                               stretching(scope.say("criteria.authority")), stretching(scope.say("criteria.asked-by"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.assessment().criteria) {
    const std::string edition = one.edition.empty() || one.edition == "none" ? std::string() : scope.say("criteria.edition", {{"edition", one.edition}});
    rows.push_back(row({cell(content::strong(one.name)), cell(limits_on_hull(scope, one)),
                        cell(plain(one.authority + edition) + content::soft(scope.say("criteria.scope", {{"scope", one.scope}}) + bound_words(scope, one))), reason_cell(scope, one)},
                       criterion_id(one.id)));
    rows.back().rule_after = true;
  }
  if (!rows.empty()) rows.back().rule_after = false;
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("criteria.strict")), plain(decision_words(scope) + " " + scope.say("criteria.probability"))};
  for (const auto &one : scope.assessment().criteria)
    if (one.kind == policy::CriterionKind::margin) {
      table.notes.push_back(plain(scope.say("criteria.substantial", {{"share", percent(scope, one.substantial_from)}})));
      break;
    }
  if (any_limit_told(scope)) table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/criteria");
}

} // namespace

content::Section criteria(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(criteria_table(scope, numbering));
  if (!scope.assessment().workings.empty()) out.blocks.push_back(workings_table(scope, numbering));
  out.blocks.push_back(ladder_table(scope, numbering));
  return out;
}

} // namespace strakebook::compose
