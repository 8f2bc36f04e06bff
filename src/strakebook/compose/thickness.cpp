#include "strakebook/compose/thickness.h"

#include <algorithm>

#include "strakebook/compose/subjects.h"
#include "strakebook/steel/assess/ladder.h"
#include "strakebook/steel/assess/originals.h"

namespace strakebook::compose {

namespace {

constexpr double nm_in_mm = 1e6;
constexpr double nm_in_m = 1e9;
constexpr int thickest_rung_band = 4; // of five: the last rung is bands 4 and 5, those above it count down

} // namespace

double mm_of(Length thickness) { return static_cast<double>(thickness.nm()) / nm_in_mm; }
double metres_of(const base::Measured &station) { return static_cast<double>(station.value.nm()) / nm_in_m; }

std::vector<DrawnLimit> limits_of(const Scope &scope, std::string_view zone) {
  std::vector<DrawnLimit> out;
  const auto &subjects = assess::zone_result(scope.assessment(), zone).subjects;
  if (subjects.empty()) return out;
  for (const auto &result : subjects.front().results)
    if (result.verdict != assess::Verdict::not_applicable) out.push_back({result.criterion, result.limit, result.governs, result.told});
  std::ranges::stable_sort(out, {}, &DrawnLimit::remaining);
  return out;
}

std::optional<DrawnLimit> main_limit(const Scope &scope, std::string_view zone) {
  const auto limits = limits_of(scope, zone);
  const auto found = std::ranges::find(limits, assess::zone_result(scope.assessment(), zone).measured_by, &DrawnLimit::criterion);
  return found == limits.end() ? std::nullopt : std::optional(*found);
}

std::string limit_name(const Scope &scope, std::string_view id, Length limit) {
  const auto *found = criterion(scope, id);
  const bool of_original = found != nullptr &&
                           (found->kind == policy::CriterionKind::percent || found->kind == policy::CriterionKind::margin);
  return of_original ? percent(scope, found->most_loss) : base::mm_exact(limit, 1);
}

DrawnOriginal drawn_original(const Scope &scope, const survey::Zone &zone) {
  const Length nominal = zone.original.nominal.value;
  if (zone.original.tolerances.empty()) return {nominal, nominal, nominal};
  const auto interval = assess::delivery(zone, scope.policy(), nominal);
  return interval ? DrawnOriginal{nominal, interval->lower, interval->upper, true} : DrawnOriginal{nominal, nominal, nominal};
}

std::set<std::string> tolerances_in_use(const Scope &scope) {
  std::set<std::string> ids;
  for (const auto &zone : scope.assessment().zones) {
    ids.insert(zone.tolerances.begin(), zone.tolerances.end());
    for (const auto &size : zone.nominals)
      for (const auto &fit : size.fits) ids.insert(fit.tolerance);
  }
  return ids;
}

std::string ramp_meaning(const Scope &scope, const survey::Zone &zone, Length remaining) {
  const auto &ladder = scope.policy().ladder;
  const Length original = assess::zone_result(scope.assessment(), zone.id).highest_original;
  const auto rung = assess::rung_of(ladder, remaining, original);
  if (!rung) return "ramp-1";
  const int from_last = static_cast<int>(ladder.rungs.size() - 1 - *rung);
  int band = std::max(1, thickest_rung_band - from_last);
  if (from_last == 0 && remaining >= drawn_original(scope, zone).thinnest) ++band;
  return "ramp-" + std::to_string(band);
}

std::string map_sign(const std::optional<assess::Standing> &standing) {
  return standing ? "map-" + verdict_meaning(standing->result.verdict) : std::string("map-unjudged");
}

bool not_met(const std::optional<assess::Standing> &standing) {
  return standing && standing->result.verdict != assess::Verdict::meets;
}

} // namespace strakebook::compose
