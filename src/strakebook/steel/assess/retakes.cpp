#include "strakebook/steel/assess/retakes.h"

#include <algorithm>

#include "strakebook/steel/assess/low_side.h"

namespace strakebook::assess {

namespace {

Length size(Length off) { return std::max(off, -off); }

/// How far the nearer end of judged .. displayed lies from a limit; nothing where the limit lies between them.
Length nearest_off(Length judged, Length shown, Length limit) {
  const Length low = judged - limit, high = shown - limit;
  if (low < Length{} && high > Length{}) return {};
  return size(low) <= size(high) ? low : high;
}

/// The limits of a zone are those that its subjects were judged by: every one of them was judged by all. `within` absent: however
/// far off.
void consider(std::vector<Retake> &into, const ZoneResult &zone, std::string place, Length judged, Length shown,
              std::optional<Length> within) {
  std::optional<Retake> nearest;
  if (zone.subjects.empty()) return;
  for (const CriterionResult &result : zone.subjects.front().results) {
    if (result.verdict == Verdict::not_applicable) continue;
    const Length off = nearest_off(judged, shown, result.limit);
    if ((within && size(off) > *within) || (nearest && size(off) >= size(nearest->off))) continue;
    nearest = Retake{.place = place, .criterion = result.criterion, .limit = result.limit, .off = off};
  }
  if (nearest) into.push_back(std::move(*nearest));
}

} // namespace

std::vector<Retake> retakes(const Assessment &so_far, const survey::Survey &survey, const policy::Policy &policy) {
  std::vector<Retake> found;
  const auto zone_at = [&](const std::string &row) -> const ZoneResult & {
    return zone_result(so_far, survey::zone_of_row(survey, row).id);
  };
  for (const MarkResult &mark : so_far.marks)
    if (mark.used && mark.indicative)
      // Nobody knows what an echo through a film of unknown thickness reads too much, so no distance from a limit is enough.
      consider(found, zone_at(survey.marks[mark.mark].row), survey.marks[mark.mark].id(), mark.judged(), mark.remaining,
               open_single_echo(survey.marks[mark.mark]) ? std::nullopt : std::optional(policy.retake_within));
  for (const PitResult &pit : so_far.pits)
    if (pit.indicative && pit.doubler.empty())
      consider(found, zone_at(survey.pits[pit.pit].at.row), survey.pits[pit.pit].id, pit.judged(), pit.remaining,
               policy.retake_within);
  return found;
}

} // namespace strakebook::assess
