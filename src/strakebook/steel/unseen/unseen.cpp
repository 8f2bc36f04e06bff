#include "strakebook/steel/unseen/unseen.h"

namespace strakebook::unseen {

Unseen unseen(const survey::Survey &survey, const assess::Assessment &assessment, const policy::Policy &policy) {
  Unseen out;
  const auto covered = coverage(survey, assessment);
  out.whole = whole(survey, assessment, covered);
  for (std::size_t i = 0; i < survey.zones.size(); ++i) {
    const auto &zone = survey.zones[i];
    ZoneUnseen one{.coverage = covered[i], .pits = std::nullopt};
    if (zone.pit_blocks) one.pits = pit_depths(survey, zone, assessment.zones[i], policy.unseen);
    out.zones.push_back(std::move(one));
  }
  return out;
}

} // namespace strakebook::unseen
