#include "strakebook/steel/outlook/outlook.h"

#include <nlohmann/json.hpp>

namespace strakebook::outlook {

Outlook outlook(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  Outlook found;
  found.unseen = unseen::unseen(survey, assessment, policy);
  found.history = years::compare(survey, assessment, policy);
  found.robustness = robustness::robustness(survey, assessment, policy);
  found.works = works::reckon(survey, assessment, policy);
  found.afloat = afloat::float_with(survey, assessment, policy, found.works);
  found.protection = protection::reckon(survey, assessment, policy);
  const auto add = [&](std::vector<quantity::Quantity> more) {
    found.quantities.insert(found.quantities.end(), more.begin(), more.end());
  };
  add(unseen::quantities(found.unseen));
  add(works::quantities(found.works));
  add(afloat::quantities(found.afloat));
  add(protection::quantities(found.protection));
  return found;
}

void add_json(nlohmann::ordered_json &to, const Outlook &found) {
  to["unseen"] = unseen::json(found.unseen);
  to["years"] = years::json(found.history);
  to["robustness"] = robustness::json(found.robustness);
  to["works"] = works::json(found.works);
  to["afloat"] = afloat::json(found.afloat);
  to["protection"] = protection::json(found.protection);
  to["quantities"] = quantity::json(found.quantities);
}

} // namespace strakebook::outlook
