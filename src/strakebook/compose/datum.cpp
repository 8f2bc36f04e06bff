#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/figures.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// Datum and marking: how another person finds a mark again.
namespace strakebook::compose {

namespace {

content::Block particulars(const Scope &scope) {
  const auto &d = scope.survey().datum;
  Entries entries;
  add_answer(scope, entries, scope.say("datum.from"), d.from);
  add_answer(scope, entries, scope.say("datum.towards"), d.towards);
  add_answer(scope, entries, scope.say("datum.height"), d.height);
  if (d.spacing)
    add(entries, scope.say("datum.spacing"), content::plain(as_written(*d.spacing)));
  add_if_given(scope, entries, scope.say("datum.swim"), d.swim);
  add_if_given(scope, entries, scope.say("datum.frames"), d.frames);
  if (d.frame_zero)
    add(entries, scope.say("works.frame-zero"), content::plain(untorn(as_written(*d.frame_zero))));
  add_if_given(scope, entries, scope.say("works.frames-run"), d.frames_run);
  add(entries, scope.say("datum.unit"), content::plain(std::string(base::name_of(d.station_unit))));
  return keys(std::move(entries), look::plain_keys, 2);
}

content::Figure drawing(const Scope &scope, Numbering &numbering) {
  content::Figure figure{.label = next_figure(scope, numbering),
                         .caption = scope.tell("datum.figure"),
                         .caption_above = true,
                         .panels = {},
                         .lattice = {},
                         .notes = {}};
  figure.panels.push_back({{}, {}, datum_drawing(scope), {}});
  return figure;
}

std::pair<std::string, std::string> first_and_last(const Scope &scope, std::string_view row) {
  std::pair<std::string, std::string> out;
  for (const auto &mark : scope.survey().marks) {
    if (mark.row != row)
      continue;
    if (out.first.empty())
      out.first = mark.station.raw;
    out.second = mark.station.raw;
  }
  return out;
}

/// The breadth of plating that each row stands for: a column where any row says so.
void add_breadths(const Scope &scope, content::Table &table, std::vector<content::Row> &rows) {
  const auto &lines = scope.survey().rows;
  if (std::ranges::none_of(lines, [](const survey::Row &line) { return line.stands_for.has_value(); }))
    return;
  table.columns.push_back(column(scope.say("works.stands-for"), Align::right));
  for (std::size_t i = 0; i < lines.size(); ++i)
    rows[i].cells.push_back(cell(lines[i].stands_for ? untorn(as_written(*lines[i].stands_for)) : scope.say("voice.dash")));
}

content::Block rows_of_marks(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, look::plain_table, scope.tell("datum.rows-caption"),
                              {column(scope.say("datum.row")), stretching(scope.say("datum.line")),
                               column(scope.say("datum.zone")), stretching(scope.say("datum.runs")),
                               column(scope.say("datum.stations"), Align::right),
                               column(scope.say("datum.marks"), Align::right)});
  std::vector<content::Row> rows;
  for (std::size_t i = 0; i < scope.survey().rows.size(); ++i) {
    const auto &line = scope.survey().rows[i];
    const auto [first, last] = first_and_last(scope, line.id);
    rows.push_back(row({cell(content::strong(line.id)), cell(row_words(scope, line.id)),
                        cell(zone_name(scope, line.zone)), cell(answer_to(scope, line.height)),
                        cell(scope.say("place.from-to", {{"from", first}, {"to", last}})),
                        cell(std::to_string(scope.assessment().rows.at(i).count.planned))},
                       {}, line.span));
  }
  add_breadths(scope, table, rows);
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/datum-rows");
}

} // namespace

content::Section datum(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(particulars(scope));
  out.blocks.push_back(paragraph(content::plain(scope.say("datum.naming")), look::text));
  out.blocks.push_back(block(drawing(scope, numbering), "figure/datum"));
  out.blocks.push_back(rows_of_marks(scope, numbering));
  return out;
}

} // namespace strakebook::compose
