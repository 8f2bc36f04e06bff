#include "strakebook/steel/unseen/unseen.h"

#include "strakebook/base/approximate.h"

namespace strakebook::unseen {

namespace {

using quantity::Input;
using quantity::Quantity;

constexpr int depth_places = 2, fit_places = 4, period_places = 1, share_places = 6, crystal_places = 4;

/// Of a zone, with where its inputs were taken.
struct OfZone {
  std::string name;
  const Coverage &coverage;

  Input area(const std::string &symbol) const {
    return {symbol, base::approximate(coverage.area_m2->ratio()), coverage.area_m2->places, "m2", name + " area"};
  }
};

Quantity touched(const OfZone &zone) {
  return {.of = zone.name,
          .formula = "touched-share",
          .value = *zone.coverage.touched_share,
          .places = share_places,
          .unit = {},
          .inputs = {{"n", static_cast<double>(zone.coverage.count.used), 0, "", zone.name + " marks used"},
                     {"d", base::in_metres(*zone.coverage.crystal), crystal_places, "m", "gauge crystal"},
                     zone.area("A")}};
}

Quantity period(const OfZone &zone, const PitDepths &pits) {
  return {.of = zone.name,
          .formula = "return-period",
          .value = base::approximate(pits.expected->period),
          .places = period_places,
          .unit = {},
          .inputs = {zone.area("A"),
                     {"a", base::approximate(pits.block_m2.ratio()), pits.block_m2.places, "m2", zone.name + " pit-blocks"}}};
}

Quantity level(const OfZone &zone, const Expected &found) {
  const std::string fitted = zone.name + " pit-blocks, by maximum likelihood";
  return {.of = zone.name,
          .formula = "return-level",
          .value = found.level,
          .places = depth_places,
          .unit = "mm",
          .inputs = {{"mu", found.by_likelihood.law.location, fit_places, "mm", fitted},
                     {"beta", found.by_likelihood.law.scale, fit_places, "mm", fitted},
                     {"T", base::approximate(found.period), period_places, "", zone.name + " return-period"}}};
}

} // namespace

std::vector<Quantity> quantities(const Unseen &found) {
  std::vector<Quantity> out;
  for (const auto &one : found.zones) {
    const OfZone zone{"zone " + one.coverage.zone, one.coverage};
    if (one.coverage.touched_share && one.coverage.crystal) out.push_back(touched(zone));
    if (!one.pits || !one.pits->expected) continue;
    out.push_back(period(zone, *one.pits));
    out.push_back(level(zone, *one.pits->expected));
  }
  return out;
}

} // namespace strakebook::unseen
