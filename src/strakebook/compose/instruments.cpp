#include "strakebook/compose/chapters.h"
#include "strakebook/compose/checks.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Instruments and method: what measured, how it was proved, and how far its figures may be off.
namespace strakebook::compose {

using content::plain;

namespace {

content::Block particulars(const Scope &scope, const survey::Gauge &gauge) {
  Entries entries;
  add_if_given(scope, entries, scope.say("instruments.mode"), gauge.mode);
  add_if_given(scope, entries, scope.say("instruments.probe"), gauge.probe);
  add_if_given(scope, entries, scope.say("instruments.velocity"), gauge.velocity);
  add_if_given(scope, entries, scope.say("instruments.resolution"), gauge.resolution);
  add_if_given(scope, entries, scope.say("instruments.serial"), gauge.serial);
  add_if_given(scope, entries, scope.say("instruments.setting"), gauge.setting);
  add_answer(scope, entries, scope.say("instruments.certificate"), gauge.certificate);
  add_date(scope, entries, scope.say("instruments.until"), gauge.certificate_until);
  add(entries, scope.say("instruments.u"),
      scope.tell("instruments.u-text", {{"u", plain(unit_mm(scope, base::mm_exact(gauge.u, 2)))},
                                        {"basis", answer_to(scope, gauge.u_basis)}}));
  return keys(std::move(entries), look::plain_keys, 2);
}

content::Cell figure_cell(const Scope &scope, const std::optional<base::Measured> &value) {
  return value ? cell(value->raw) : cell(not_given(scope));
}

content::Cell off_cell(const Scope &scope, const survey::Gauge &gauge,
                       const std::optional<base::Measured> &shown) {
  if (!gauge.block || !shown)
    return cell(scope.say("voice.dash"));
  const Length off = shown->value - gauge.block->value;
  return cell(off == Length{} ? base::mm_exact(off, 2) : with_sign(base::mm_exact(off, 2)));
}

std::string block_verdict(const Scope &scope, const survey::Gauge &gauge) {
  switch (block_check(scope, gauge)) {
  case BlockCheck::agrees:
    return scope.say("instruments.agrees");
  case BlockCheck::differs:
    return scope.say("instruments.differs");
  case BlockCheck::incomplete:
    return scope.say("instruments.incomplete");
  }
  return {};
}

content::Block block_checks(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("instruments.blocks-caption"),
      {stretching(scope.say("instruments.gauge")), column(scope.say("instruments.block"), Align::decimal, mm),
       column(scope.say("instruments.before"), Align::decimal, mm),
       column(scope.say("instruments.off"), Align::decimal, mm),
       column(scope.say("instruments.after"), Align::decimal, mm),
       column(scope.say("instruments.off"), Align::decimal, mm), column(scope.say("instruments.verdict"))});
  std::vector<content::Row> rows;
  for (const auto &gauge : scope.survey().gauges)
    if (needs_block(scope, gauge))
      rows.push_back(
          row({cell(gauge.name.text), figure_cell(scope, gauge.block), figure_cell(scope, gauge.before),
               off_cell(scope, gauge, gauge.before), figure_cell(scope, gauge.after),
               off_cell(scope, gauge, gauge.after), cell(block_verdict(scope, gauge))},
              {}, gauge.span));
  add_rows(table, std::move(rows));
  table.notes.push_back(
      plain(scope.say("instruments.blocks-note",
                      {{"most", unit_mm(scope, base::mm_exact(scope.policy().block_agreement, 1))}})));
  return block(std::move(table), "table/blocks");
}

content::Block surfaces(const Scope &scope) {
  std::map<survey::Surface, int> count;
  for (const auto &mark : scope.survey().marks)
    if (mark.status == survey::Status::read)
      ++count[mark.surface];
  content::List list;
  for (const auto &[surface, number] : count)
    list.items.push_back(plain(scope.say(
        "instruments.surface", {{"n", std::to_string(number)}, {"surface", surface_word(scope, surface)}})));
  return block(std::move(list));
}

} // namespace

content::Section instruments(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  for (const auto &gauge : scope.survey().gauges) {
    out.blocks.push_back(
        item_heading(capitalised(gauge.name.given() ? gauge.name.text : gauge.id), "gauge/" + gauge.id));
    out.blocks.push_back(particulars(scope, gauge));
  }
  out.blocks.push_back(item_heading(scope.say("instruments.method")));
  out.blocks.push_back(paragraph(plain(scope.say("instruments.reduction")), look::text));
  out.blocks.push_back(surfaces(scope));
  const auto &rule = scope.policy().decision;
  out.blocks.push_back(
      paragraph(plain(scope.say("instruments.doubt",
                                {{"rule", rule.name}, {"band", figure(rule.band)}, {"source", rule.source}})),
                look::text));
  out.blocks.push_back(block_checks(scope, numbering));
  return out;
}

} // namespace strakebook::compose
