#include <algorithm>

#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"
#include "strakebook/steel/survey/reach.h"

/// Doublers: the outer plate as declared and as read on it, and, apart from it, what is known of the plate behind.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// "4.0–4.1, 6 marks" of what was read on a doubler; a dash where nothing was.
content::Cell read_on(const Scope &scope, const survey::Doubler &doubler) {
  std::vector<Length> figures;
  for (const auto &mark : scope.survey().marks)
    if (mark.status == survey::Status::read && mark.plate == survey::Plate::doubler && !mark.repeats.empty() &&
        survey::covers(scope.survey(), doubler.over, mark.row, mark.station.value))
      figures.push_back(std::ranges::min(mark.repeats, {}, &base::Measured::value).value);
  if (figures.empty()) return dash_cell(scope);
  const auto [low, high] = std::ranges::minmax(figures);
  return cell(scope.say("doublers.read-range", {{"low", base::mm_exact(low, 1)}, {"high", base::mm_exact(high, 1)},
                                                {"n", std::to_string(figures.size())}}));
}

Inlines behind(const Scope &scope, const survey::Doubler &doubler) {
  if (!doubler.from_inside) return content::strong(scope.say("doublers.unproven"));
  const auto &inner = *doubler.from_inside;
  const std::string place = tied(inner.at.row, inner.at.station.raw);
  return scope.tell("doublers.one-reading", {{"reading", content::strong(with_mm(scope, inner.reading))},
                                             {"at", plain(place)}, {"gauge", plain(inner.gauge)}});
}

content::Row doubler_row(const Scope &scope, const survey::Doubler &one) {
  return row({cell(content::strong(one.id)), cell(reach_words(scope, one.over)),
              one.outer ? thickness_cell(*one.outer) : dash_cell(scope), read_on(scope, one), cell(behind(scope, one)),
              cell(answer_to(scope, one.edges)), cell(answer_to(scope, one.plugs)), cell(answer_to(scope, one.drumminess)),
              cell(prose(scope, one.note.text)), cell(photo_links(scope, one.photos))},
             doubler_id(one.id), one.span);
}

} // namespace

std::vector<content::Block> doublers(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "plain", scope.tell("doublers.caption"),
                              {column(scope.say("doublers.id")), stretching(scope.say("doublers.over")),
                               column(scope.say("doublers.outer"), Align::right, mm),
                               column(scope.say("doublers.read"), Align::right, scope.say("doublers.read-unit")),
                               stretching(scope.say("doublers.behind")), stretching(scope.say("doublers.edges")),
                               stretching(scope.say("doublers.plugs")), stretching(scope.say("doublers.drum")),
                               stretching(scope.say("doublers.note")),
                               column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.survey().doublers) rows.push_back(doubler_row(scope, one));
  add_rows(table, std::move(rows));
  table.notes = {plain(scope.say("doublers.not-proven"))};
  std::vector<content::Block> out = {sub_heading(scope, numbering, scope.say("doublers.title"))};
  out.push_back(block(std::move(table), "table/doublers"));
  return out;
}

} // namespace strakebook::compose
