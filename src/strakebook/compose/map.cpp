#include "strakebook/compose/map_parts.h"

#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/subjects.h"

/// Shell expansion: where the steel was read.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

Inlines verdict_signs(const Scope &scope) {
  using assess::Verdict;
  return scope.tell("map.signs", {{"meets", verdict_sign(scope, Verdict::meets)},
                                  {"close", verdict_sign(scope, Verdict::too_close)},
                                  {"short", verdict_sign(scope, Verdict::falls_short)},
                                  {"unread", Inlines{content::Sign{"not-read", scope.say("map.unread-spoken")}}}});
}

bool draws_unjudged(const Scope &scope) {
  const auto unjudged = [](const auto &place) { return !place.standing; };
  return std::ranges::any_of(scope.assessment().marks, [&](const auto &mark) { return mark.used && unjudged(mark); }) ||
         std::ranges::any_of(scope.assessment().pits, unjudged);
}

/// What the signs on the map say; of the rarer ones, those that this map has.
Inlines signs(const Scope &scope) {
  Inlines out = verdict_signs(scope);
  if (draws_unjudged(scope)) out = out + plain(" " + scope.say("map.unjudged"));
  if (!scope.survey().pits.empty()) out = out + plain(" " + scope.say("map.pitted"));
  if (!scope.survey().limitations.empty()) out = out + plain(" " + scope.say("map.unseen"));
  if (!scope.survey().doublers.empty()) out = out + plain(" " + scope.say("map.doubled"));
  if (!scope.survey().photos.empty()) out = out + plain(" " + scope.say("map.flagged"));
  if (any_mark_lowered(scope) || any_pit_lowered(scope)) out = out + plain(" " + scope.say("map.displayed"));
  return out;
}

/// The tones at the left, the signs at their right.
content::Block legend(const Scope &scope) {
  content::Figure tones;
  tones.panels.push_back({content::strong(scope.say("map.tone")), {}, ramp_legend(scope), "figure/map/legend"});
  content::Columns columns{look::map_legend, {}};
  columns.cells.push_back({block(std::move(tones))});
  columns.cells.push_back({paragraph(signs(scope), look::note)});
  return block(std::move(columns));
}

Inlines counts(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  if (count.doubler > 0)
    return plain(scope.say("map.counts-doublers", {{"read", std::to_string(count.read)}, {"planned", std::to_string(count.planned)},
                                                   {"doubler", std::to_string(count.doubler)}, {"unread", std::to_string(not_read(count) + count.rejected)}}));
  return plain(scope.say("map.counts", {{"read", std::to_string(count.read)}, {"planned", std::to_string(count.planned)},
                                        {"unread", std::to_string(not_read(count) + count.rejected)}}));
}

content::Figure figure_of(const Scope &scope, Numbering &numbering) {
  content::Figure out;
  out.label = next_figure(scope, numbering);
  if (!needs_bays(scope)) {
    out.caption = scope.tell("map.caption", {{"counts", counts(scope)}});
    out.panels.push_back({{}, {}, map_of_marks(scope), "figure/map/marks"});
    return out;
  }
  const std::string outline = all_met(scope) ? scope.say_computed("map.all-met") : scope.say("map.outline");
  out.caption = scope.tell("map.bays-caption", {{"counts", counts(scope)}, {"outline", plain(outline)}});
  out.panels = maps_of_bays(scope, {}, "map");
  return out;
}

} // namespace

bool has_places_of_note(const Scope &scope, const survey::Zone &zone) {
  const auto in_zone = [&](const std::string &row) { return survey::zone_of_row(scope.survey(), row).id == zone.id; };
  const auto &survey = scope.survey();
  return std::ranges::any_of(survey.pits, [&](const survey::Pit &pit) { return in_zone(pit.at.row); }) ||
         std::ranges::any_of(survey.marks, [&](const survey::Mark &mark) { return mark.plate == survey::Plate::doubler && in_zone(mark.row); }) ||
         std::ranges::any_of(scope.assessment().marks, [&](const assess::MarkResult &one) { return not_met(one.standing) && in_zone(survey.marks[one.mark].row); });
}

std::optional<content::Block> zone_map(const Scope &scope, Numbering &numbering, const survey::Zone &zone) {
  if (!has_places_of_note(scope, zone)) return std::nullopt;
  content::Figure out;
  out.label = next_figure(scope, numbering);
  out.caption = scope.tell("map.zone-caption", {{"zone", plain(zone.name.text)}, {"map", label_link("figure/map")}});
  if (needs_bays(scope)) out.panels = maps_of_bays(scope, zone.id, "page");
  else out.panels.push_back({{}, {}, map_of_zone(scope, zone), {}});
  return block(std::move(out), "figure/zone-map/" + zone.id);
}

content::Section map(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(block(figure_of(scope, numbering), "figure/map"));
  out.blocks.push_back(legend(scope));
  if (needs_bays(scope) && !all_met(scope)) out.blocks.push_back(not_met_list(scope, numbering));
  return out;
}

} // namespace strakebook::compose
