#include "strakebook/steel/assess/defaults.h"

#include "strakebook/steel/assess/spots.h"

namespace strakebook::assess {

std::vector<Default> defaults_used(const survey::Survey &survey, const Assessment &so_far) {
  using What = Default::What;
  std::vector<Default> taken;
  const auto take = [&](What what, const survey::Pit &pit, const GaugeResult *gauge) {
    taken.push_back({.what = what, .pit = pit.id, .gauge = gauge ? gauge->gauge : std::string()});
  };
  if (!so_far.workings.empty() && !survey.vessel.wing_voids) taken.push_back({.what = What::wing_voids, .pit = {}, .gauge = {}});
  for (const PitResult &result : so_far.pits) {
    if (!result.doubler.empty()) continue; // judged by nothing, so no doubt is taken
    const survey::Pit &pit = survey.pits[result.pit];
    if (pit.gauge.empty()) take(What::pit_gauge, pit, depth_gauge(so_far.gauges, pit));
    if (const GaugeBeside beside = gauge_beside(survey, so_far.gauges, pit); beside.chosen) take(What::gauge_beside, pit, beside.gauge);
  }
  return taken;
}

} // namespace strakebook::assess
