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

constexpr int most_bays_on_a_page = 55;

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
  if (any_mark_lowered(scope) || any_pit_lowered(scope)) out = out + plain(" " + scope.say("map.displayed"));
  return out;
}

Inlines counts(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
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
  const int bays = bay_count(scope);
  for (int first = 0; first < bays; first += most_bays_on_a_page - 1)
    out.panels.push_back({{}, {}, map_of_bays(scope, first, std::min(bays, first + most_bays_on_a_page)), "figure/map/bays-" + std::to_string(first)});
  return out;
}

} // namespace

content::Section map(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(block(figure_of(scope, numbering), "figure/map"));
  content::Figure legend;
  legend.panels.push_back({content::strong(scope.say("map.tone")), {}, ramp_legend(scope), "figure/map/legend"});
  legend.notes = {signs(scope)};
  out.blocks.push_back(block(std::move(legend)));
  if (needs_bays(scope) && !all_met(scope)) out.blocks.push_back(not_met_list(scope, numbering));
  return out;
}

} // namespace strakebook::compose
