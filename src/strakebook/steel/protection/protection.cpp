#include "strakebook/steel/protection/protection.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/protection/parts.h"

namespace strakebook::protection {

namespace {

using Json = nlohmann::ordered_json;

std::optional<Suited> suited(const survey::Survey &survey, const survey::Words &metal, const policy::Policy &policy) {
  const std::string &water = survey.afloat.water.text;
  const auto known = policy.protection.metals.find(metal.text);
  if (known == policy.protection.metals.end() || !policy.afloat.waters.contains(water)) return std::nullopt;
  const auto &waters = known->second.waters;
  return Suited{.metal = metal.text, .water = water, .waters = waters, .suits = std::ranges::find(waters, water) != waters.end()};
}

std::optional<Worn> worn(const survey::Survey &survey, const policy::ProtectionRule &rule) {
  const auto &fitted = survey.coating.fitted;
  if (!fitted || !fitted->on || !fitted->worn_percent || !survey.report.inspected) return std::nullopt;
  const base::Date on = fitted->on->value, inspected = survey.report.inspected->value;
  return Worn{.on = on,
              .inspected = inspected,
              .percent = *fitted->worn_percent,
              .unworn = base::months_later(on, rule.unworn_months) <= inspected &&
                        fitted->worn_percent->ratio() < rule.unworn_percent.ratio()};
}

template <class T> Json given(const std::optional<T> &value) { return value ? Json(*value) : Json(nullptr); }

Json form(const std::optional<Anodes> &anodes) {
  if (!anodes || !anodes->count) return nullptr;
  return {{"current_a", *anodes->current_a}, {"mass_kg", *anodes->mass_kg}, {"count", *anodes->count}};
}

} // namespace

Protection reckon(const survey::Survey &survey, const assess::Assessment &, const policy::Policy &policy) {
  Protection found;
  for (const survey::CoatingScheme &scheme : survey.coating.schemes) found.schemes.push_back(reckon(scheme));
  if (survey.coating.plan) {
    found.anodes = reckon(*survey.coating.plan, policy.protection);
    found.planned = suited(survey, survey.coating.plan->metal, policy);
  }
  if (survey.coating.fitted) found.fitted = suited(survey, survey.coating.fitted->metal, policy);
  found.width = width_of(survey, policy);
  found.worn = worn(survey, policy.protection);
  return found;
}

nlohmann::ordered_json json(const Protection &found) {
  auto schemes = Json::array();
  for (const Scheme &one : found.schemes) schemes.push_back({{"id", one.id}, {"litres", given(one.litres)}});
  return {{"schemes", std::move(schemes)},
          {"anodes", form(found.anodes)},
          {"beam_over_all", found.width ? Json(base::mm_exact(found.width->over_all())) : Json(nullptr)},
          {"unworn", found.worn ? Json(found.worn->unworn) : Json(nullptr)}};
}

std::vector<quantity::Quantity> quantities(const Protection &found) {
  std::vector<quantity::Quantity> out;
  for (const Scheme &one : found.schemes)
    if (one.litres) out.push_back(one.working);
  if (found.anodes) out.insert(out.end(), found.anodes->workings.begin(), found.anodes->workings.end());
  if (found.width)
    out.push_back({"hull", "beam-over-all", base::in_millimetres(found.width->over_all()), 0, "mm",
                   {{"B", base::in_millimetres(found.width->beam), 0, "mm", "vessel beam"},
                    {"p", base::in_millimetres(found.width->port), 0, "mm", "port"},
                    {"s", base::in_millimetres(found.width->starboard), 0, "mm", "starboard"}}});
  return out;
}

} // namespace strakebook::protection
