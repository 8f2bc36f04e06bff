#include <algorithm>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/plate_glyph.h"

/// Readings and pits that were corrected, added or withdrawn, old and new, with the plate drawn as each issue had it.
namespace strakebook::compose {

using amend::Change;
using amend::How;
using content::plain;
using content::operator+;

const Scope &scope_with(const Editions &both, const std::string &subject) {
  const auto &now = both.now.survey();
  const bool there = survey::mark_of(now, subject) != nullptr || survey::pit_of(now, subject) != nullptr;
  return there ? both.now : both.before;
}

survey::Place place_of_steel(const Editions &both, const std::string &subject) {
  const auto &survey = scope_with(both, subject).survey();
  if (const auto *pit = survey::pit_of(survey, subject))
    return pit->at;
  const auto *mark = survey::mark_of(survey, subject);
  return {mark->row, mark->station, mark->span};
}

std::string changed_figure(const Editions &both, const Change &change, std::optional<Length> remaining) {
  const auto &scope = scope_with(both, change.subject);
  const auto &zone = survey::zone_of_row(scope.survey(), place_of_steel(both, change.subject).row);
  return remaining ? remaining_text(scope, zone.id, *remaining) : both.now.say("voice.dash");
}

namespace {

constexpr const char *no_text = "\u00A0"; // keeps a line of a cell open

/// One edition's plate; the plate beside a pit from that edition's survey.
PlateGlyph plate_of(const Scope &scope, const std::string &subject, Length remaining, const survey::Zone &zone) {
  const auto limit = main_limit(scope, zone.id);
  PlateGlyph out{.original = zone.original.nominal.value, .remaining = remaining, .under_pit = {},
                 .limit = limit ? std::optional(limit->remaining) : std::nullopt, .ramp = ramp_meaning(scope, zone, remaining), .widest = {}};
  if (const auto *pit = survey::pit_of(scope.survey(), subject)) {
    out.remaining = pit->adjacent.value;
    out.under_pit = remaining;
  }
  return out;
}

const survey::Zone *zone_with(const Scope &scope, const std::string &row) {
  const auto *line = survey::row_of(scope.survey(), row);
  return line == nullptr ? nullptr : survey::zone_of(scope.survey(), line->zone);
}

content::Cell pair_cell(const Editions &both, const Change &change, Length widest) {
  content::Cell out = cell(std::string());
  const std::string row = place_of_steel(both, change.subject).row;
  const auto *now = zone_with(both.now, row), *before = zone_with(both.before, row);
  if (!change.remaining_before || !change.remaining_after || now == nullptr || before == nullptr)
    return out;
  PlateGlyph old_plate = plate_of(both.before, change.subject, *change.remaining_before, *before);
  PlateGlyph new_plate = plate_of(both.now, change.subject, *change.remaining_after, *now);
  old_plate.widest = new_plate.widest = widest;
  out.glyph = plate_pair({old_plate, was_head(both)}, {new_plate, is_head(both)});
  out.glyph->spoken = both.now.say("changes.glyph", {{"before", changed_figure(both, change, change.remaining_before)},
                                                    {"now", changed_figure(both, change, change.remaining_after)}});
  return out;
}

/// What stands in one line of a reading's row.
struct Line {
  Inlines what, before, now;
};

std::vector<Line> lines_of(const Editions &both, const Change &change) {
  const bool moved = change.remaining_before != change.remaining_after;
  const std::string before = changed_figure(both, change, change.remaining_before), now = changed_figure(both, change, change.remaining_after);
  std::vector<Line> out = {{content::strong(untorn(change.subject)), moved && change.remaining_before ? content::struck(before) : plain(before),
                            moved ? content::strong(now) : plain(now)}};
  if (change.how != How::changed)
    return out;
  for (const auto &one : change.differences) {
    const bool the_same = one.before == before && one.after == now;
    if (!is_figure(one) || the_same)
      continue;
    const Shown shown = shown_difference(both.now, one.before, one.after);
    out.push_back({content::soft(untorn(one.field)), shown.before, shown.now});
  }
  return out;
}

content::Cell stacked(const std::vector<Line> &lines, Inlines Line::*part) {
  Inlines out;
  for (const auto &line : lines) {
    if (!out.empty())
      out.emplace_back(content::LineBreak{});
    out = std::move(out) + ((line.*part).empty() ? plain(no_text) : line.*part);
  }
  return cell(std::move(out));
}

content::Row corrected_row(const Editions &both, const Change &change, Length widest) {
  const auto lines = lines_of(both, change);
  auto out = row({stacked(lines, &Line::what), stacked(lines, &Line::before), stacked(lines, &Line::now), pair_cell(both, change, widest),
                  cell(reason_words(both.now, change)), page_cell(both.now, change.subject)},
                 {}, change.span);
  out.changed = true;
  out.rule_after = true;
  return out;
}

bool has_figures(const Change &change) {
  return change.how == How::added || change.remaining_before != change.remaining_after || std::ranges::any_of(change.differences, is_figure);
}

content::Row withdrawn_row(const Editions &both, const Change &change) {
  auto out = row({cell(content::strong(untorn(change.subject))), cell(row_words(both.before, place_of_steel(both, change.subject).row)),
                  cell(content::struck(changed_figure(both, change, change.remaining_before))), cell(reason_words(both.now, change)),
                  page_cell(both.now, change.subject)},
                 {}, change.span);
  out.changed = true;
  return out;
}

std::vector<const Change *> measured(const Editions &both, bool withdrawn) {
  std::vector<const Change *> out;
  for (const auto &one : both.amended.changes.all)
    if (is_measured(one.kind) && (one.how == How::withdrawn) == withdrawn)
      out.push_back(&one);
  return out;
}

} // namespace

std::vector<content::Block> readings_corrected(const Editions &both) {
  const Scope &scope = both.now;
  const std::string mm = scope.say("voice.mm");
  const Length widest = std::max(widest_plate(scope), widest_plate(both.before));
  std::vector<content::Row> rows;
  for (const auto *change : measured(both, false))
    if (has_figures(*change))
      rows.push_back(corrected_row(both, *change, widest));
  if (rows.empty())
    return {};
  auto table = unlabelled_table(look::items_table, {column(scope.say("changes.mark")), column(was_head(both), Align::right, mm),
                                                    column(is_head(both), Align::right, mm), column(scope.say("changes.section"), Align::left, scope.say("changes.section-unit")),
                                                    stretching(scope.say("changes.why")), column({}, Align::right)});
  add_rows(table, std::move(rows));
  return {item_heading(scope.say("changes.readings-head")), block(std::move(table), "table/readings-changed")};
}

std::vector<content::Block> readings_withdrawn(const Editions &both) {
  const Scope &scope = both.now;
  std::vector<content::Row> rows;
  for (const auto *change : measured(both, true))
    rows.push_back(withdrawn_row(both, *change));
  if (rows.empty())
    return {};
  auto table = unlabelled_table(look::items_table, {column(scope.say("changes.mark")), column(scope.say("changes.row")),
                                                    column(was_head(both), Align::right, scope.say("voice.mm")), stretching(scope.say("changes.why")),
                                                    column({}, Align::right)});
  add_rows(table, std::move(rows));
  return {item_heading(scope.say("changes.withdrawn-head")), block(std::move(table), "table/readings-withdrawn")};
}

} // namespace strakebook::compose
