#include <algorithm>
#include <cmath>

#include "strakebook/base/approximate.h"
#include "strakebook/compose/comparison_parts.h"
#include "strakebook/compose/plots.h"
#include "strakebook/compose/thickness.h"

/// Then against now, zone by zone at one scale.
namespace strakebook::compose {

using content::plain;

namespace {

/// Only what an earlier survey has: a plate as built was not measured.
std::vector<const years::Place *> compared(const Scope &scope, const std::string &zone) {
  std::vector<const years::Place *> out;
  for (const auto &place : scope.outlook().history.places)
    if (place.change && (zone.empty() || place.zone == zone)) out.push_back(&place);
  return out;
}

/// Whole millimetres about every figure, the same for all panels.
PlotAxis axis(const Scope &scope) {
  Length low = Length::millimetres(1'000), high;
  for (const auto *place : compared(scope, {})) {
    low = std::min({low, place->governing()->then, place->judged()});
    high = std::max({high, place->governing()->then, place->judged()});
  }
  PlotAxis out{.low = std::floor(mm_of(low)), .high = std::ceil(mm_of(high)), .numbers = {}, .title = scope.say("comparison.axis-then")};
  for (double at = out.low; at <= out.high; ++at) out.numbers.emplace_back(at, std::to_string(static_cast<int>(at)));
  return out;
}

/// The greatest doubt of a change at a mark of the zone, in mm; of its pits where it has no mark.
double doubt(const Scope &scope, const std::vector<const years::Place *> &places) {
  const bool marks = std::ranges::any_of(places, [](const auto *place) { return !place->pit; });
  double widest = 0;
  for (const auto *place : places)
    if (!place->pit || !marks)
      widest = std::max(widest, std::sqrt(static_cast<double>(place->governing()->variance.num) / static_cast<double>(place->governing()->variance.den)));
  return base::approximate(scope.policy().decision.band) * base::in_millimetres(Length::nanometres(std::llround(widest)));
}

/// Named are the pits, what has grown, and what the zone's figures are taken from.
bool named(const Scope &scope, const years::Place &place) {
  const auto &zone = years::zone_of(scope.outlook().history, place.zone);
  return place.pit || place.change == years::Change::grown || place.id == zone.greatest_at || place.id == zone.shortest_at;
}

Drawing panel(const Scope &scope, const std::vector<const years::Place *> &places) {
  Comparison plot{.places = {}, .doubt = doubt(scope, places), .both = axis(scope), .after_title = scope.say("comparison.axis-now")};
  for (const auto *place : places)
    plot.places.push_back({mm_of(place->governing()->then), mm_of(place->judged()), named(scope, *place) ? place->id : std::string(),
                           subject_target(scope, place->id)});
  return comparison_plot(plot, scope.say("comparison.plot-spoken", {{"n", std::to_string(places.size())}}));
}

} // namespace

std::vector<content::Block> changes_figure(const Scope &scope, Numbering &numbering) {
  content::Figure figure;
  for (const auto &zone : scope.survey().zones)
    if (const auto places = compared(scope, zone.id); !places.empty())
      figure.panels.push_back({plain(zone.name.text), {}, panel(scope, places), "figure/changes/" + zone.id});
  if (figure.panels.empty()) return {};
  figure.label = next_figure(scope, numbering);
  figure.caption = scope.tell("comparison.plot-caption");
  figure.lattice = "halves";
  return {block(std::move(figure), "figure/changes")};
}

} // namespace strakebook::compose
