#include "strakebook/compose/checks.h"

#include <algorithm>

namespace strakebook::compose {

namespace {

using ActionFlag = bool policy::Action::*;

bool any_with(const Scope &scope, const std::set<std::string> &actions, ActionFlag flag) {
  return std::ranges::any_of(actions, [&](const std::string &id) {
    const auto found = scope.policy().actions.find(id);
    return found != scope.policy().actions.end() && found->second.*flag;
  });
}

bool any_gauge_in_doubt(const Scope &scope) {
  return std::ranges::any_of(scope.assessment().gauges, &assess::GaugeResult::indicative);
}

bool any_hammer_matter(const Scope &scope) {
  const bool struck = std::ranges::any_of(
      scope.survey().notes, [](const survey::Note &note) { return note.kind == survey::Note::Kind::hammer; });
  const auto thin = [](const assess::CriterionResult &result) {
    return result.verdict == assess::Verdict::too_close || result.verdict == assess::Verdict::falls_short;
  };
  for (const auto &zone : scope.assessment().zones)
    for (const auto &subject : zone.subjects)
      if (std::ranges::any_of(subject.results, thin))
        return true;
  return struck;
}

bool out_of_water(const Scope &scope) {
  const auto &given = scope.survey().conditions.out_of_water;
  return given && given->value;
}

} // namespace

std::set<std::string> actions_asked(const Scope &scope) {
  std::set<std::string> out;
  for (const auto &one : scope.survey().decisions)
    out.insert(one.action);
  for (const auto &one : scope.survey().recommendations)
    out.insert(one.action);
  for (const auto &one : scope.survey().steelwork)
    out.insert(one.action);
  return out;
}

bool any_adds_steel(const Scope &scope, const std::set<std::string> &actions) {
  return any_with(scope, actions, &policy::Action::adds_steel);
}
bool any_adverse(const Scope &scope, const std::set<std::string> &actions) {
  return any_with(scope, actions, &policy::Action::adverse);
}
bool any_doubler(const Scope &scope, const std::set<std::string> &actions) {
  return any_with(scope, actions, &policy::Action::doubler);
}

bool applies(const Scope &scope, const house::Caution &caution) {
  const auto actions = actions_asked(scope);
  if (caution.when == "hot-work")
    return !scope.survey().steelwork.empty() || any_adverse(scope, actions);
  if (caution.when == "steel-added")
    return any_adds_steel(scope, actions);
  if (caution.when == "doubler")
    return !scope.survey().doublers.empty() || any_doubler(scope, actions);
  if (caution.when == "lifting")
    return out_of_water(scope);
  if (caution.when == "hammer")
    return any_hammer_matter(scope);
  if (caution.when == "afloat")
    return !out_of_water(scope);
  if (caution.when == "spot-check")
    return scope.assessment().spot_check;
  if (caution.when == "gauge")
    return any_gauge_in_doubt(scope);
  return true;
}

std::vector<const house::Caution *> cautions_of_action(const Scope &scope, const std::string &action) {
  const std::set<std::string> one = {action};
  std::vector<const house::Caution *> out;
  for (const auto &caution : scope.wording().cautions) {
    const bool hot = caution.when == "hot-work" && any_adverse(scope, one);
    const bool steel = caution.when == "steel-added" && any_adds_steel(scope, one);
    const bool doubled = caution.when == "doubler" && any_doubler(scope, one);
    if (hot || steel || doubled)
      out.push_back(&caution);
  }
  return out;
}

} // namespace strakebook::compose
