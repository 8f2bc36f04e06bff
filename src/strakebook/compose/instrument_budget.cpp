#include "strakebook/compose/instrument_tables.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Budgets of doubt: what each is made of, and what it comes to.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string component_word(const Scope &scope, const std::string &id) {
  if (id == "resolution")
    return scope.say("budget.resolution");
  if (id == "block")
    return scope.say("budget.block");
  if (id == "velocity")
    return scope.say("budget.velocity");
  if (id == "repeatability")
    return scope.say("budget.repeatability");
  return id == "surface" ? scope.say("budget.surface") : scope.say("budget.coating");
}

std::string how_given(const Scope &scope, const survey::DoubtComponent &component, const assess::GaugeResult &result) {
  if (component.u)
    return scope.say("budget.given-u");
  if (component.half_width)
    return scope.say("budget.given-half-width", {{"a", as_written(*component.half_width)}});
  return scope.say("budget.given-share",
                   {{"share", tied(figure(*component.share), scope.say("voice.percent"))},
                    {"of", unit_mm(scope, base::mm_exact(result.thickest.value_or(Length{}), 1))}});
}

content::Row component_row(const Scope &scope, const survey::DoubtComponent &component, const assess::DoubtPart &part,
                           const assess::GaugeResult &result) {
  Inlines given = plain(how_given(scope, component, result));
  if (component.why.given())
    given = given + plain(scope.say("budget.because")) + prose(scope, component.why.text);
  return row({cell(component_word(scope, part.component)), cell(std::move(given)), cell(doubt_mm(part.u, places_of_u)),
              cell(part.degrees ? figure(*part.degrees) : scope.say("budget.infinite"))},
             {}, component.span);
}

content::Row sum_row(const Scope &scope, const assess::GaugeResult &result) {
  return row({cell(content::strong(scope.say("budget.sum"))),
              cell(scope.say("budget.w", {{"factor", figure(result.factor)},
                                          {"w", unit_mm(scope, doubt_mm(result.band_nm, places_of_u))}})),
              cell(content::strong(doubt_mm(result.u, places_of_u))),
              cell(result.degrees ? std::to_string(*result.degrees) : scope.say("budget.infinite"))});
}

} // namespace

std::string gauge_name(const survey::Gauge &gauge) { return gauge.name.given() ? gauge.name.text : gauge.id; }

std::vector<content::Block> budgets(const Scope &scope, Numbering &numbering) {
  std::vector<content::RowGroup> groups;
  for (std::size_t i = 0; i < scope.survey().gauges.size(); ++i) {
    const auto &gauge = scope.survey().gauges[i];
    const auto &result = scope.assessment().gauges[i];
    if (gauge.doubt.empty())
      continue;
    content::RowGroup group{.head = content::strong(gauge_name(gauge)), .id = "budget/" + gauge.id, .rows = {}};
    for (std::size_t k = 0; k < gauge.doubt.size(); ++k)
      group.rows.push_back(component_row(scope, gauge.doubt[k], result.parts[k], result));
    group.rows.push_back(sum_row(scope, result));
    groups.push_back(std::move(group));
  }
  if (groups.empty())
    return {};
  auto table = labelled_table(
      scope, numbering, look::plain_table, scope.tell("budget.caption"),
      {column(scope.say("budget.component")), stretching(scope.say("budget.given")),
       column(scope.say("budget.u"), Align::decimal, scope.say("voice.mm")), column(scope.say("budget.degrees"), Align::right)});
  table.groups = std::move(groups);
  const auto &rule = scope.policy().decision;
  table.notes = {plain(scope.say("budget.note", {{"coverage", percent(scope, rule.coverage)}, {"band", figure(rule.band)}}))};
  std::vector<content::Block> out;
  out.push_back(block(std::move(table), "table/budgets"));
  return out;
}

} // namespace strakebook::compose
