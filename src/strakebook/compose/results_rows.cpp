#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/wastage.h"

/// Each row of marks in figures, and what they come to together.
namespace strakebook::compose {

using content::plain;

namespace {

content::Row summary_row(const Scope &scope, const assess::RowSummary &summary) {
  const auto &zone = survey::zone_of_row(scope.survey(), summary.row);
  std::vector<content::Cell> cells = {cell(content::strong(summary.row)), cell(row_words(scope, summary.row)),
                                      cell(std::to_string(summary.count.planned)), cell(std::to_string(summary.count.read)),
                                      cell(std::to_string(summary.count.used))};
  if (summary.min && summary.max && summary.mean_nm) {
    const Ratio mean_mm{summary.mean_nm->num, summary.mean_nm->den * 1'000'000};
    cells.push_back(cell(content::strong(remaining_text(scope, zone.id, *summary.min))));
    cells.push_back(cell(base::to_text(base::round_to(mean_mm, 2))));
    cells.push_back(cell(base::mm_exact(*summary.max, 1)));
    cells.push_back(cell(link(mark_id(summary.worst), summary.worst)));
  } else {
    for (int i = 0; i < 4; ++i) cells.push_back(dash_cell(scope));
  }
  return row(std::move(cells));
}

} // namespace

content::Block rows_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "summary", scope.tell("results.rows-caption"),
                              {column(scope.say("results.row")), stretching(scope.say("results.row-name")),
                               column(scope.say("results.planned"), Align::right), column(scope.say("results.read"), Align::right),
                               column(scope.say("results.used"), Align::right), column(scope.say("results.min"), Align::decimal, mm),
                               column(scope.say("results.mean"), Align::decimal, mm), column(scope.say("results.max"), Align::decimal, mm),
                               column(scope.say("results.worst"))});
  std::vector<content::Row> rows;
  for (const auto &summary : scope.assessment().rows) rows.push_back(summary_row(scope, summary));
  const auto &all = scope.assessment().coverage;
  if (rows.size() > 1)
    rows.push_back(total_row(rows.front(), {scope.say("results.all"), "", std::to_string(all.planned), std::to_string(all.read), std::to_string(all.used)}));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("results.rows-note"))};
  for (const auto &zone : scope.assessment().zones)
    if (const auto words = wastage_sentences(scope, zone))
      table.notes.push_back(scope.tell("results.zone-line", {{"zone", plain(zone_name(scope, zone.zone))}, {"words", words->text()}}));
  return block(std::move(table), "table/rows");
}

} // namespace strakebook::compose
