#include "strakebook/compose/told.h"

#include <algorithm>

namespace strakebook::compose {

namespace {

void add(std::vector<std::string> &tellers, const std::optional<base::Provenance> &from) {
  if (from && from->origin == base::Origin::told && std::ranges::find(tellers, from->by) == tellers.end())
    tellers.push_back(from->by);
}

std::vector<std::string> tellers(const Scope &scope) {
  std::vector<std::string> out;
  for (const auto &zone : scope.survey().zones)
    add(out, survey::provenance_of(zone.original.source.text));
  if (scope.assessment().workings.empty())
    return out;
  const auto &vessel = scope.survey().vessel;
  add(out, vessel.length.from);
  if (vessel.draught)
    add(out, vessel.draught->from);
  if (vessel.frame_spacing)
    add(out, vessel.frame_spacing->from);
  return out;
}

} // namespace

std::string told_sign(const Scope &scope, bool told) { return told ? scope.say("told.sign") : std::string(); }

Inlines told_legend(const Scope &scope) {
  return content::plain(scope.say("told.legend", {{"who", join_and(scope, tellers(scope))}}));
}

bool loss_is_told(const Scope &scope, const assess::ZoneResult &zone) {
  if (!zone.told || !zone.weak_basis)
    return zone.told;
  const Length nominal = survey::zone_of(scope.survey(), zone.zone)->original.nominal.value;
  const auto &usual = scope.policy().usual_nominals;
  return std::ranges::find(usual, nominal) == usual.end();
}

bool limit_is_told(const assess::ZoneResult &zone, std::string_view criterion) {
  return std::ranges::any_of(zone.subjects, [&](const assess::Subject &subject) {
    return std::ranges::any_of(subject.results,
                               [&](const auto &result) { return result.told && result.criterion == criterion; });
  });
}

bool any_limit_told(const Scope &scope) {
  return std::ranges::any_of(scope.assessment().zones, [](const assess::ZoneResult &zone) {
    return std::ranges::any_of(zone.subjects, [](const assess::Subject &subject) {
      return std::ranges::any_of(subject.results, &assess::CriterionResult::told);
    });
  });
}

} // namespace strakebook::compose
