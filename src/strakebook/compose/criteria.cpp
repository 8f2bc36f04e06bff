#include <algorithm>
#include <set>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/thickness.h"

/// Criteria: every limit a reader might apply, with its authority; how nearness is judged; the firm's ladder.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// The limits that a criterion sets on this hull, zone kinds with the same limit told once: "4.00", "3.00; bilge 3.225".
std::string limits_on_hull(const Scope &scope, const policy::Criterion &criterion) {
  std::vector<std::string> parts;
  std::set<std::string> seen;
  for (const auto &zone : scope.survey().zones)
    for (const auto &limit : limits_of(scope, zone.id)) {
      if (limit.criterion != criterion.id) continue;
      const std::string text = scope.say("criteria.limit", {{"zone", zone.name.text}, {"mm", limit_text(limit.remaining)}});
      if (seen.insert(text).second) parts.push_back(text);
    }
  return parts.empty() ? scope.say("criteria.nowhere") : join_and(scope, parts);
}

content::Cell reason_cell(const Scope &scope, const policy::Criterion &criterion) {
  for (const auto &use : scope.survey().criteria)
    if (use.id == criterion.id)
      return cell(scope.tell("criteria.asked", {{"who", answer_to(scope, use.asked_by)}, {"why", answer_to(scope, use.why)}}));
  return criterion.asked_by.empty() ? cell(not_given(scope)) : cell(criterion.asked_by);
}

content::Block criteria_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, "plain", scope.tell("criteria.caption"),
                              {column(scope.say("criteria.name")), stretching(scope.say("criteria.limits")),
                               stretching(scope.say("criteria.authority")), stretching(scope.say("criteria.asked-by"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.assessment().criteria) {
    const std::string edition = one.edition.empty() || one.edition == "none" ? std::string() : scope.say("criteria.edition", {{"edition", one.edition}});
    rows.push_back(row({cell(content::strong(one.name)), cell(limits_on_hull(scope, one)),
                        cell(plain(one.authority + edition) + content::soft(scope.say("criteria.scope", {{"scope", one.scope}}))), reason_cell(scope, one)},
                       criterion_id(one.id)));
    rows.back().rule_after = true;
  }
  rows.back().rule_after = false;
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("criteria.strict"))};
  return block(std::move(table), "table/criteria");
}

std::string plating_word(const Scope &scope, const std::string &key) {
  if (key.ends_with("bilge")) return scope.say("criteria.bilge");
  return key.ends_with("bottom") ? scope.say("criteria.bottom") : scope.say("criteria.side");
}

content::Block workings(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "plain", scope.tell("criteria.working-caption"),
                              {stretching(scope.say("criteria.name")), column(scope.say("criteria.plating")),
                               column(scope.say("criteria.by-length"), Align::decimal, mm), column(scope.say("criteria.by-draught"), Align::decimal, mm),
                               column(scope.say("criteria.floor")), column(scope.say("criteria.minimum"), Align::decimal, mm)});
  std::vector<content::Row> rows;
  for (const auto &[key, working] : scope.assessment().workings) {
    const auto id = key.substr(0, key.rfind('/'));
    rows.push_back(row({cell(criterion(scope, id) == nullptr ? id : criterion(scope, id)->name), cell(plating_word(scope, key)),
                        cell(base::mm_text(working.by_length, 3)), cell(base::mm_text(working.by_draught, 3)),
                        cell(working.floored ? scope.say("criteria.floored") : scope.say("criteria.not-floored")),
                        cell(content::strong(limit_text(working.limit)))}));
  }
  add_rows(table, std::move(rows));
  const auto &vessel = scope.survey().vessel;
  table.notes = {plain(scope.say("criteria.working-note", {{"length", as_written(vessel.length.length)},
                                                           {"draught", vessel.draught ? as_written(vessel.draught->length) : scope.say("voice.dash")},
                                                           {"spacing", vessel.frame_spacing ? as_written(vessel.frame_spacing->length) : scope.say("voice.dash")}}))};
  return block(std::move(table), "table/workings");
}

content::Block ladder_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, "plain", scope.tell("criteria.ladder-caption"),
                              {column(scope.say("criteria.when")), stretching(scope.say("criteria.isolated")), stretching(scope.say("criteria.extensive")),
                               column(scope.say("criteria.class"))});
  std::vector<content::Row> rows;
  for (const auto &rung : scope.policy().ladder.rungs)
    rows.push_back(row({cell(rung.when), cell(rung.isolated_words), cell(rung.extensive_words), cell(join_and(scope, rung.classes))}));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("criteria.ladder-note", {{"few", scope.policy().ladder.too_few_words}, {"source", scope.policy().ladder.source}}))};
  return block(std::move(table), "table/ladder");
}

} // namespace

content::Section criteria(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(criteria_table(scope, numbering));
  if (!scope.assessment().workings.empty()) out.blocks.push_back(workings(scope, numbering));
  const auto &rule = scope.policy().decision;
  const auto &extent = scope.policy().extent;
  out.blocks.push_back(paragraph(plain(scope.say("criteria.decision", {{"rule", rule.name}, {"band", figure(rule.band)}, {"source", rule.source}})), look::text));
  out.blocks.push_back(paragraph(plain(scope.say("criteria.extent", {{"most", figure(extent.most_per_m2)}, {"under", figure(extent.under_percent)}, {"source", extent.source}})), look::text));
  out.blocks.push_back(ladder_table(scope, numbering));
  return out;
}

} // namespace strakebook::compose
