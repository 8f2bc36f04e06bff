#include <algorithm>

#include "strakebook/compose/crossing.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/plate_glyph.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"
#include "strakebook/compose/wastage.h"

/// Pits, zone by zone, least remaining first; every pit once.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

constexpr std::ptrdiff_t after_remaining = 6; // where the low side stands, if the table has it

content::Cell optional_cell(const Scope &scope, const std::optional<base::Decimal> &value) {
  return value ? cell(figure(*value)) : dash_cell(scope);
}

/// A pit's name, and the doubler that it is on.
content::Cell pit_cell(const Scope &scope, const survey::Pit &pit, const assess::PitResult &result) {
  Inlines text = {content::Reference{map_id(pit_id(pit.id)), content::Reference::Form::text, pit.id, content::Emphasis::strong}};
  if (result.doubler.empty()) return cell(std::move(text));
  text.emplace_back(content::LineBreak{});
  return cell(std::move(text) + content::italic(scope.say("pits.on-doubler", {{"doubler", result.doubler}})));
}

std::vector<std::string> on_doublers(const Scope &scope) {
  std::vector<std::string> out;
  for (const auto &result : scope.assessment().pits)
    if (!result.doubler.empty()) out.push_back(scope.survey().pits[result.pit].id);
  return out;
}

/// What is the same for the whole table.
struct PitsView {
  Length widest;
  ItemsAt items;
  bool low = false;   ///< a column for the low side
  bool cited = false; ///< and one for the recommendations that rest on a pit
};

content::Row pit_row(const Scope &scope, const survey::Pit &pit, const assess::PitResult &result, const PitsView &view) {
  const auto &zone = survey::zone_of_row(scope.survey(), pit.at.row);
  const auto limit = main_limit(scope, zone.id);
  content::Cell remaining = cell(content::strong(remaining_text(scope, zone.id, result.remaining)));
  if (result.standing) {
    remaining.sign = verdict_meaning(result.standing->result.verdict);
    remaining.spoken = verdict_word(scope, result.standing->result);
  }
  content::Cell glyph = cell(std::string());
  glyph.glyph = plate_glyph({zone.original.nominal.value, pit.adjacent.value, result.remaining,
                             limit ? std::optional(limit->remaining) : std::nullopt, ramp_meaning(scope, zone, result.judged()),
                             view.widest});
  glyph.glyph->spoken = scope.say("pits.glyph", {{"mm", remaining_text(scope, zone.id, result.remaining)},
                                                 {"adjacent", in_mm(pit.adjacent)}});
  const bool hull = result.doubler.empty();
  if (!hull) {
    glyph.glyph = doubler_glyph(zone.original.nominal.value, result.remaining, view.widest);
    glyph.glyph->spoken = scope.say("results.glyph-doubler");
  }
  std::vector<content::Cell> cells = {pit_cell(scope, pit, result), cell(pit.at.row), cell(untorn(pit.at.station.raw)), thickness_cell(pit.adjacent), thickness_cell(pit.depth),
              std::move(remaining), std::move(glyph), hull ? cell(short_mm(result.loss)) : dash_cell(scope),
              share_cell(scope, result.share), margin_cell(scope, result.standing),
              pit.across ? thickness_cell(*pit.across) : dash_cell(scope),
              optional_cell(scope, pit.per_m2), optional_cell(scope, pit.share_percent), cell(pit.face.text), cell(pit.activity.text),
              cell(photo_links(scope, pit.photos))};
  if (view.cited) cells.push_back(cell(item_links(scope, items_at(view.items, pit_id(pit.id)))));
  if (view.low) cells.insert(cells.begin() + after_remaining, result.low ? cell(low_text(scope, zone.id, *result.low)) : dash_cell(scope));
  return row(std::move(cells), pit_id(pit.id), pit.span);
}

std::vector<content::Column> pit_columns(const Scope &scope, const PitsView &view) {
  const std::string mm = scope.say("voice.mm");
  std::vector<content::Column> columns = {column(scope.say("pits.pit")),
          column(scope.say("results.row")),
          column(scope.say("results.station"), Align::decimal, std::string(base::name_of(scope.survey().datum.station_unit))),
          column(scope.say("pits.adjacent"), Align::decimal, mm),
          column(scope.say("pits.depth"), Align::decimal, mm),
          column(scope.say("results.remaining"), Align::decimal, mm),
          column(scope.say("results.section"), Align::left, scope.say("results.section-unit")),
          column(scope.say("results.loss"), Align::decimal, mm),
          column(scope.say("results.share"), Align::decimal, scope.say("results.share-unit")),
          column(scope.say("results.over-limit"), Align::decimal, mm),
          column(scope.say("pits.across"), Align::decimal, mm),
          column(scope.say("pits.count"), Align::decimal, scope.say("pits.count-unit")),
          column(scope.say("pits.area"), Align::decimal, scope.say("pits.area-unit")),
          column(scope.say("pits.face")),
          column(scope.say("pits.state")),
          column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit"))};
  if (view.cited) columns.push_back(column(scope.say("results.item"), Align::right, scope.say("results.photo-unit")));
  if (view.low) columns.insert(columns.begin() + after_remaining, column(scope.say("results.low"), Align::decimal, mm));
  return columns;
}

Inlines extent_line(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  std::optional<Sentence> text = extent_sentence(scope, zone, result);
  add_sentence(text, pitting_sentences(scope, zone, result));
  return scope.tell("pits.zone-line", {{"zone", plain(zone.name.text)}, {"words", text->text()}});
}

} // namespace

content::Block pits_table(const Scope &scope, Numbering &numbering) {
  const ItemsAt items = items_by_subject(scope);
  const PitsView view{widest_plate(scope), items, any_pit_lowered(scope), any_item_at(items, pit_id({}))};
  auto table = labelled_table(scope, numbering, "pits", scope.tell("pits.caption"), pit_columns(scope, view));
  bool any_told = false;
  for (const auto &zone : scope.survey().zones) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < scope.survey().pits.size(); ++i)
      if (survey::zone_of_row(scope.survey(), scope.survey().pits[i].at.row).id == zone.id) found.push_back(i);
    if (found.empty()) continue;
    const auto &results = scope.assessment().pits;
    std::ranges::stable_sort(found, {}, [&](std::size_t i) { return results[i].judged(); });
    const auto &result = assess::zone_result(scope.assessment(), zone.id);
    const bool told = result.told && !result.weak_basis;
    any_told = any_told || told;
    content::RowGroup group{.head = content::strong(zone.name.text + told_sign(scope, told)), .id = "pits/" + zone.id, .rows = {}};
    for (const std::size_t i : found) group.rows.push_back(pit_row(scope, scope.survey().pits[i], results[i], view));
    table.groups.push_back(std::move(group));
    table.notes.push_back(extent_line(scope, zone, result));
  }
  if (any_told) table.notes.push_back(told_legend(scope));
  if (const auto outer = on_doublers(scope); !outer.empty())
    table.notes.push_back(plain(scope.say_computed("pits.outer-note", {{"pits", join_and(scope, outer)}})));
  return block(std::move(table), "table/pits");
}

} // namespace strakebook::compose
