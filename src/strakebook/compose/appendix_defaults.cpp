#include <map>

#include "strakebook/compose/appendix_lists.h"

/// Values that the survey leaves open, and what was taken in their place.
namespace strakebook::compose {

using content::plain;
using What = assess::Default::What;

namespace {

std::string gauge_words(const Scope &scope, const std::string &id, const std::vector<std::string> &pits) {
  const bool all = pits.size() == scope.survey().pits.size();
  const base::Fill where{"pits", all ? scope.say("appendices.every-pit") : join_and(scope, pits)};
  const auto *gauge = survey::gauge_of(scope.survey(), id);
  const auto *result = assess::gauge_result(scope.assessment(), id);
  if (gauge == nullptr || result == nullptr)
    return scope.say("appendices.default-no-gauge", {where});
  return scope.say("appendices.default-text", {where,
                                               {"gauge", gauge->name.given() ? gauge->name.text : gauge->id},
                                               {"u", unit_mm(scope, base::mm_exact(result->u, 2))}});
}

} // namespace

void add_defaults(const Scope &scope, Entries &entries) {
  std::map<std::pair<What, std::string>, std::vector<std::string>> pits; // by what is taken, and which gauge
  for (const auto &taken : scope.assessment().defaults) {
    if (taken.what == What::wing_voids)
      add(entries, scope.say("appendices.default-voids"), plain(scope.say("appendices.default-voids-text")));
    else
      pits[{taken.what, taken.gauge}].push_back(taken.pit);
  }
  for (const auto &[taken, ids] : pits)
    add(entries, taken.first == What::pit_gauge ? scope.say("appendices.default-depth") : scope.say("appendices.default-beside"),
        plain(gauge_words(scope, taken.second, ids)));
}

} // namespace strakebook::compose
