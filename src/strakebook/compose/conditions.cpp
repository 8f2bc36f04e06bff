#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Conditions of the survey: how she was held, what was cleaned, and how each zone was prepared.
namespace strakebook::compose {

namespace {

void add_yes_no(const Scope &scope, Entries &entries, std::string label, const survey::Given<bool> &given) {
  add(entries, std::move(label), given ? content::plain(yes_no(scope, given->value)) : not_given(scope));
}

content::Block preparation(const Scope &scope, Numbering &numbering) {
  auto table =
      labelled_table(scope, numbering, look::plain_table, scope.tell("conditions.caption"),
                     {column(scope.say("conditions.zone")), stretching(scope.say("conditions.prepared")),
                      stretching(scope.say("conditions.order"))});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.survey().zones)
    rows.push_back(row({cell(zone.name.text), cell(answer_to(scope, zone.preparation)),
                        cell(answer_to(scope, zone.general_order))},
                       {}, zone.span));
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/preparation");
}

} // namespace

content::Section conditions(const Scope &scope) {
  const auto &on_the_day = scope.survey().conditions;
  auto out = section_of(scope);
  Numbering numbering;
  Entries entries;
  add_date(scope, entries, scope.say("conditions.inspected"), scope.survey().report.inspected);
  add_answer(scope, entries, scope.say("conditions.place"), scope.survey().report.place);
  add_answer(scope, entries, scope.say("conditions.held"), on_the_day.how_held);
  add_yes_no(scope, entries, scope.say("conditions.out-of-water"), on_the_day.out_of_water);
  add_yes_no(scope, entries, scope.say("conditions.cleaned"), on_the_day.cleaned);
  add_answer(scope, entries, scope.say("conditions.preparation"), on_the_day.preparation);
  add_if_given(scope, entries, scope.say("conditions.weather"), on_the_day.weather);
  add_if_given(scope, entries, scope.say("conditions.lighting"), on_the_day.lighting);
  add_if_given(scope, entries, scope.say("conditions.access"), on_the_day.access);
  add_if_given(scope, entries, scope.say("conditions.present"), on_the_day.present);
  out.blocks.push_back(keys(std::move(entries), look::plain_keys, 2));
  out.blocks.push_back(preparation(scope, numbering));
  return out;
}

} // namespace strakebook::compose
