#include <algorithm>
#include <vector>

#include "strakebook/compose/map_parts.h"

/// What the map shows, for those who cannot see it.
namespace strakebook::compose {

std::string spoken_row(const Scope &scope, const assess::RowSummary &summary) {
  const auto &zone = survey::zone_of_row(scope.survey(), summary.row);
  const std::string read = std::to_string(summary.count.read), planned = std::to_string(summary.count.planned);
  if (!summary.min) return scope.say("map.spoken-none", {{"row", summary.row}, {"planned", planned}});
  return scope.say("map.spoken-row", {{"row", summary.row}, {"read", read}, {"planned", planned},
                                      {"least", remaining_text(scope, zone.id, *summary.min)}, {"at", tied_mark(summary.worst)}});
}

std::string spoken_pits(const Scope &scope, std::string_view row) {
  std::vector<std::string> pits;
  for (const auto &result : scope.assessment().pits)
    if (const auto &pit = scope.survey().pits[result.pit]; pit.at.row == row)
      pits.push_back(pit.id + " " + remaining_text(scope, survey::zone_of_row(scope.survey(), row).id, result.remaining));
  return pits.empty() ? std::string() : " " + scope.say("map.spoken-pits", {{"pits", join_and(scope, pits)}});
}

std::string spoken_rows(const Scope &scope, std::string_view zone) {
  std::string out;
  for (const auto &summary : scope.assessment().rows)
    if (zone.empty() || survey::zone_of_row(scope.survey(), summary.row).id == zone)
      out += (out.empty() ? "" : " ") + spoken_row(scope, summary) + spoken_pits(scope, summary.row);
  return out;
}

} // namespace strakebook::compose
