#include "strakebook/compose/robustness.h"

#include <algorithm>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/robustness_parts.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"

/// The grid of a decision page: at the left absolute limits against the doubt, at the right shares against the original.
namespace strakebook::compose {

using content::Block;
using content::plain;
using robustness::Grid;
using robustness::InZone;
using robustness::Tried;

namespace {

content::Cell empty_cell() { return cell(std::string()); }

Inlines assumed(std::string text, bool used) {
  return used ? content::strong(std::move(text)) : content::soft(std::move(text));
}

content::Cell tried_cell(const Scope &scope, const Tried &tried) {
  std::string margin = margin_text(tried.result, tried.band_nm);
  content::Cell out = cell(tried.used ? content::strong(std::move(margin)) : plain(std::move(margin)));
  out.sign = verdict_meaning(tried.result.verdict);
  out.spoken = verdict_word(scope, tried.result);
  return out;
}

/// One line of a grid, which lists column after column; empty cells past its end.
template <class One>
void add_line(const Scope &scope, std::vector<content::Cell> &to, const std::vector<One> &all, std::size_t line,
              std::size_t columns) {
  const std::size_t lines = all.size() / columns;
  for (std::size_t column = 0; column < columns; ++column)
    to.push_back(line < lines ? tried_cell(scope, all[column * lines + line].tried) : empty_cell());
}

template <class One>
bool column_used(const InZone &zone, std::vector<One> Grid::*all, std::size_t column, std::size_t columns) {
  return std::ranges::any_of(zone.grids, [&](const Grid &grid) {
    const auto lines = static_cast<std::ptrdiff_t>((grid.*all).size() / columns);
    const auto from = (grid.*all).begin() + static_cast<std::ptrdiff_t>(column) * lines;
    return std::any_of(from, from + lines, [](const One &one) { return one.tried.used; });
  });
}

content::Cell doubt_cell(const Scope &scope, const InZone &zone, const Grid &grid, std::size_t line) {
  if (line >= zone.over.doubts.size())
    return empty_cell();
  const auto &first = grid.limits.at(line);
  const std::string times = base::to_text(first.doubt), doubt = doubt_text(scope, first.tried.band_nm);
  return cell(assumed(scope.say("robustness.doubt-cell", {{"times", times}, {"doubt", doubt}}), first.doubt.ratio() == Ratio{1, 1}));
}

content::Cell original_cell(const Scope &scope, const Judged &judged, const InZone &zone, std::size_t line) {
  if (line >= zone.over.originals.size())
    return empty_cell();
  const Length original = zone.over.originals[line];
  const bool taken = !judged.result.weak_basis && original == judged.zone.original.nominal.value;
  return cell(assumed(base::mm_exact(original, 1) + told_sign(scope, loss_is_told(scope, judged.result)), taken));
}

/// The place in the first line, what it is judged by in the second.
content::Cell place_cell(const Scope &scope, const Judged &judged, const assess::Subject &subject, std::size_t line) {
  if (line == 0)
    return cell(link(subject_target(scope, subject.id), tied_mark(subject.id)));
  return line == 1 ? cell(judged_text(scope, judged.zone.id, subject)) : empty_cell();
}

content::RowGroup group_of(const Scope &scope, const Judged &judged, const InZone &zone, std::size_t which) {
  const Grid &grid = zone.grids[which];
  const auto &over = zone.over;
  content::RowGroup group;
  for (std::size_t line = 0; line < std::max(over.doubts.size(), over.originals.size()); ++line) {
    std::vector<content::Cell> cells = {place_cell(scope, judged, judged.result.subjects[which], line),
                                        doubt_cell(scope, zone, grid, line)};
    add_line(scope, cells, grid.limits, line, over.limits.size());
    cells.push_back(original_cell(scope, judged, zone, line));
    add_line(scope, cells, grid.losses, line, over.losses.size());
    group.rows.push_back(row(std::move(cells)));
  }
  return group;
}

std::vector<content::Column> columns_of(const Scope &scope, const InZone &zone) {
  const std::string mm = scope.say("voice.mm"), used = scope.say("robustness.used");
  const auto &over = zone.over;
  std::vector<content::Column> out = {stretching(scope.say("robustness.place")),
                                      column(scope.say("robustness.doubt"), Align::right, mm)};
  out.front().unit = mm;
  for (std::size_t i = 0; i < over.limits.size(); ++i)
    out.push_back(column(tried_limit(over.limits[i]), Align::right,
                         column_used(zone, &Grid::limits, i, over.limits.size()) ? used : mm));
  out.push_back(column(scope.say("robustness.original"), Align::right, mm));
  for (std::size_t i = 0; i < over.losses.size(); ++i)
    out.push_back(column(percent(scope, over.losses[i]), Align::right,
                         column_used(zone, &Grid::losses, i, over.losses.size()) ? used : scope.say("robustness.lost")));
  return out;
}

Block grid_table(const Scope &scope, Numbering &numbering, const Judged &judged, const InZone &zone) {
  auto table = labelled_table(scope, numbering, look::small_table, scope.tell("robustness.caption"), columns_of(scope, zone));
  for (std::size_t i = 0; i < zone.grids.size(); ++i)
    table.groups.push_back(group_of(scope, judged, zone, i));
  if (loss_is_told(scope, judged.result))
    table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/robustness/" + zone.zone);
}

} // namespace

std::vector<Block> robustness_of(const Scope &scope, Numbering &numbering, const Judged &judged) {
  const InZone &zone = robustness::in_zone(scope.outlook().robustness, judged.zone.id);
  if (zone.criterion.empty())
    return {};
  std::vector<Block> out;
  if (!all_alike(zone) && !says_enough(judged, zone))
    out.push_back(grid_table(scope, numbering, judged, zone));
  out.push_back(computed(scope, robustness_sentence(scope, judged, zone),
                         scope.say("robustness.by-ranges", {{"source", scope.policy().robustness.source}})));
  return out;
}

} // namespace strakebook::compose
