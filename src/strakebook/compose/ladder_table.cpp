#include "strakebook/compose/criteria_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

namespace strakebook::compose {

using content::plain;

content::Block ladder_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, look::small_table, scope.tell("criteria.ladder-caption"),
                              {column(scope.say("criteria.when")), stretching(scope.say("criteria.isolated")), stretching(scope.say("criteria.extensive")),
                               column(scope.say("criteria.class"))});
  std::vector<content::Row> rows;
  for (const auto &rung : scope.policy().ladder.rungs)
    rows.push_back(row({cell(rung.when), cell(rung.isolated_words), cell(rung.extensive_words), cell(join_and(scope, rung.classes))}));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("criteria.ladder-note", {{"few", scope.policy().ladder.too_few_words}, {"source", scope.policy().ladder.source}}))};
  return block(std::move(table), "table/ladder");
}

} // namespace strakebook::compose
