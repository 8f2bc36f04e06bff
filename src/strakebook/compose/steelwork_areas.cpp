#include <algorithm>

#include "strakebook/base/approximate.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/steelwork_parts.h"
#include "strakebook/compose/tables.h"

/// Places that do not meet the limit of their zone, gathered into areas; and what covering each would weigh.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

using works::Area;
using works::Option;

assess::Verdict verdict_of(Area::Kind kind) {
  return kind == Area::Kind::falls_short ? assess::Verdict::falls_short : assess::Verdict::too_close;
}

content::Cell name_cell(const Scope &scope, const Area &area) {
  auto out = cell(content::strong(area.id));
  out.sign = verdict_meaning(verdict_of(area.kind));
  out.spoken = verdict_word(scope, verdict_of(area.kind));
  return out;
}

Inlines where(const Scope &scope, const Area &area) {
  Inlines out = plain(tied(join_and(scope, area.rows),
                           scope.say("place.from-to", {{"from", station_text(scope, area.along.from)}, {"to", station_text(scope, area.along.to)}})));
  for (const auto &frame : {area.frame_from, area.frame_to}) {
    if (!frame) continue;
    out.emplace_back(content::LineBreak{});
    out = std::move(out) + content::soft(frame_text(scope, *frame));
  }
  return out;
}

std::string size(const Scope &scope, const Area &area) {
  const std::string length = rounded(base::in_metres(area.along.length()), 2);
  return area.breadth ? scope.say("works.size", {{"length", length}, {"breadth", rounded(base::in_metres(*area.breadth), 2)}}) : length;
}

std::string m2(const Scope &scope, const Area &area) { return area.area_m2 ? rounded(*area.area_m2, 2) : scope.say("voice.dash"); }

Inlines places(const Scope &scope, const Area &area) {
  const std::string n = std::to_string(area.places.size());
  return plain(area.unseen == 0 ? n : scope.say("works.places-unseen", {{"n", n}, {"unseen", std::to_string(area.unseen)}}));
}

Inlines least(const Scope &scope, const Area &area) {
  return scope.tell("works.least-at", {{"mm", content::strong(remaining_text(scope, area.zone, area.least))},
                                       {"at", link(subject_target(scope, area.at), tied_mark(area.at))}});
}

std::string ladder(const Scope &scope, const Area &area) {
  if (area.suggested.empty()) return scope.say("voice.dash");
  std::string out;
  for (const auto &action : area.suggested) out += (out.empty() ? "" : scope.say("works.or")) + action_name(scope, action);
  return out;
}

/// What covers it, each a link, then the places that nothing covers.
Inlines cover(const Scope &scope, const Area &area) {
  Inlines out;
  const auto add = [&](Inlines more) {
    if (!out.empty()) out = std::move(out) + plain(", ");
    out = std::move(out) + std::move(more);
  };
  for (const auto &id : area.covered_by) add(link(steelwork_id(id), id));
  for (const auto &id : area.recommended_by) add(link(item_id(id), scope.say("steelwork.for-item", {{"item", id}})));
  if (area.uncovered.size() == area.places.size()) return plain(scope.say("works.nothing"));
  if (area.uncovered.empty()) return out;
  std::vector<std::string> open;
  for (const auto &place : area.uncovered) open.push_back(tied_mark(place));
  return std::move(out) + plain(scope.say("works.but", {{"places", join_and(scope, open)}}));
}

content::Block areas_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, look::register_table, scope.tell("works.areas-caption"),
                              {column(scope.say("works.area")), column(scope.say("works.where")),
                               column(scope.say("works.extent"), Align::left, scope.say("works.metres")),
                               column(scope.say("works.surface"), Align::right, scope.say("works.square-metres")),
                               column(scope.say("works.places"), Align::right), column(scope.say("works.least"), Align::left, mm),
                               stretching(scope.say("works.ladder")), stretching(scope.say("works.covered"))});
  std::vector<content::Row> rows;
  for (const auto &area : scope.outlook().works.areas)
    rows.push_back(row({name_cell(scope, area), cell(where(scope, area)), cell(size(scope, area)), cell(m2(scope, area)), cell(places(scope, area)),
                        cell(least(scope, area)), cell(ladder(scope, area)), cell(cover(scope, area))},
                       "area/" + area.id));
  add_rows(table, std::move(rows));
  table.notes.push_back(plain(scope.say("works.areas-note")));
  return block(std::move(table), "table/areas");
}

/// The options of one area, side by side.
struct Pair {
  const Option *insert = nullptr, *overplate = nullptr;
};

Pair options_of(const Scope &scope, const Area &area) {
  Pair out;
  for (const auto &option : scope.outlook().works.options)
    if (option.area == area.id) (option.kind == Option::Kind::insert ? out.insert : out.overplate) = &option;
  return out;
}

content::Row option_row(const Scope &scope, const Area &area, const Pair &pair) {
  const auto kg = [&](const Option *option, double Option::*of) { return option ? rounded(option->*of, 1) : scope.say("voice.dash"); };
  const Option &any = *pair.overplate;
  return row({cell(content::strong(area.id)), cell(base::mm_exact(any.thickness)),
              cell(any.thickness_from.empty() ? scope.say("works.by-nominal") : any.thickness_from), cell(rounded(any.area_m2, 2)),
              cell(kg(&any, &Option::weight_kg)), cell(kg(pair.insert, &Option::removed_kg)), cell(kg(pair.insert, &Option::net_kg)),
              cell(kg(pair.overplate, &Option::net_kg))});
}

std::optional<content::Block> options_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm"), kg = scope.say("works.kilograms");
  std::vector<content::Row> rows;
  for (const auto &area : scope.outlook().works.areas)
    if (const Pair pair = options_of(scope, area); pair.overplate) rows.push_back(option_row(scope, area, pair));
  if (rows.empty()) return std::nullopt;
  auto table = labelled_table(scope, numbering, look::register_table, scope.tell("works.options-caption"),
                              {column(scope.say("works.area")), column(scope.say("works.plate"), Align::right, mm), column(scope.say("works.plate-from")),
                               column(scope.say("works.surface"), Align::right, scope.say("works.square-metres")),
                               column(scope.say("works.plate-weight"), Align::right, kg), column(scope.say("works.comes-off"), Align::right, kg),
                               column(scope.say("works.let-in"), Align::right, kg), column(scope.say("works.laid-over"), Align::right, kg)});
  add_rows(table, std::move(rows));
  table.notes.push_back(plain(scope.say("works.options-note")));
  return block(std::move(table), "table/options");
}

} // namespace

std::vector<content::Block> areas_gathered(const Scope &scope, Numbering &numbering) {
  if (scope.outlook().works.areas.empty()) return {computed(scope, scope.tell_computed("works.no-area"), scope.say("works.area-rule"))};
  std::vector<content::Block> out = {areas_table(scope, numbering)};
  if (auto options = options_table(scope, numbering)) out.push_back(std::move(*options));
  return out;
}

} // namespace strakebook::compose
