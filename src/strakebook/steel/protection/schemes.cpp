#include "strakebook/steel/protection/exact.h"
#include "strakebook/steel/protection/parts.h"

/// Litres of paint.
namespace strakebook::protection {

namespace {

constexpr int nm_in_um = 1000;

std::vector<Lack> lacking(const survey::CoatingScheme &scheme) {
  std::vector<Lack> out;
  if (!scheme.area_m2) out.push_back(Lack::area);
  if (!scheme.dry_film) out.push_back(Lack::film);
  if (!scheme.solids_percent) out.push_back(Lack::solids);
  if (!scheme.loss_percent) out.push_back(Lack::loss);
  return out;
}

} // namespace

Scheme reckon(const survey::CoatingScheme &scheme) {
  Scheme out{.id = scheme.id, .litres = std::nullopt, .lacking = lacking(scheme), .working = {}};
  if (!out.lacking.empty()) return out;
  const Exact area = exact(*scheme.area_m2), film(scheme.dry_film->value.nm(), nm_in_um), solids = exact(*scheme.solids_percent);
  const Exact loss = share(*scheme.loss_percent);
  out.litres = rounded(Exact(area * film / (10 * solids) / (1 - loss)));
  const std::string of = "scheme " + scheme.id;
  out.working = {of, "paint-volume", *out.litres, 1, "l",
                 {{"A", rounded(area), scheme.area_m2->places, "m2", of + " area-m2"},
                  {"DFT", rounded(film), 0, "um", of + " dry-film"},
                  {"VS", rounded(solids), scheme.solids_percent->places, "%", of + " solids-percent"},
                  {"loss", rounded(loss), scheme.loss_percent->places + 2, "", of + " loss-percent"}}};
  return out;
}

} // namespace strakebook::protection
