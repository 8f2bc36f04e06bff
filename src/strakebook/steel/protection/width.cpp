#include <algorithm>

#include "strakebook/steel/protection/parts.h"
#include "strakebook/steel/survey/reach.h"

/// What stands out from her sides.
namespace strakebook::protection {

namespace {

/// Plate under the bottom makes her no wider.
bool reaches_side(const survey::Survey &survey, const survey::Reach &reach, survey::Side side) {
  return std::ranges::any_of(survey.rows, [&](const survey::Row &row) {
    return row.side == side && survey::zone_of_row(survey, row.id).plating != policy::Plating::bottom &&
           survey::covers_row(survey, reach, row.id);
  });
}

bool laid_over(const policy::Policy &policy, const survey::SteelworkItem &item) {
  const auto action = policy.actions.find(item.action);
  return action != policy.actions.end() && action->second.doubler;
}

} // namespace

std::optional<Width> width_of(const survey::Survey &survey, const policy::Policy &policy) {
  Width out{.beam = survey.vessel.beam.length.value};
  bool unknown = survey.coating.plan && !survey.coating.plan->stands_out;
  const auto add = [&](const survey::SteelworkItem &item, survey::Side side, Length &on) {
    if (!reaches_side(survey, item.at, side)) return false;
    unknown = unknown || !item.thickness;
    if (item.thickness) on = std::max(on, item.thickness->value);
    return true;
  };
  for (const survey::SteelworkItem &item : survey.steelwork) {
    if (!laid_over(policy, item)) continue;
    const bool port = add(item, survey::Side::port, out.port), starboard = add(item, survey::Side::starboard, out.starboard);
    if (port || starboard) out.items.push_back(item.id);
  }
  if (const auto &plan = survey.coating.plan; plan && plan->stands_out) {
    out.anodes = true;
    out.port = out.port + plan->stands_out->value;
    out.starboard = out.starboard + plan->stands_out->value;
  }
  if (unknown || (out.items.empty() && !out.anodes)) return std::nullopt; // a part of it would say too little
  if (survey.vessel.narrowest) out.narrowest = survey.vessel.narrowest->length.value;
  return out;
}

} // namespace strakebook::protection
