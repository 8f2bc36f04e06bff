#include "strakebook/steel/works/works.h"

#include "strakebook/steel/policy/formula.h"
#include "strakebook/steel/works/areas.h"
#include "strakebook/steel/works/items.h"

namespace strakebook::works {

Works reckon(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  Works found{.areas = areas_of(survey, assessment, policy), .items = {}, .options = {},
              .density = base::parse_decimal(policy.steel_density_kg_m2_mm).value()};
  for (const survey::SteelworkItem &item : survey.steelwork) found.items.push_back(item_of(survey, assessment, policy, item));
  for (const Area &area : found.areas)
    for (Option &option : options_of(survey, assessment, found.items, area, found.density))
      found.options.push_back(std::move(option));
  return found;
}

} // namespace strakebook::works
