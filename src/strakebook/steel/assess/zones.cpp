#include "strakebook/steel/assess/zones.h"

#include <algorithm>

#include "strakebook/steel/assess/ladder.h"
#include "strakebook/steel/assess/other_readings.h"
#include "strakebook/steel/assess/originals.h"
#include "strakebook/steel/assess/pitting.h"
#include "strakebook/steel/assess/readings.h"
#include "strakebook/steel/assess/spots.h"
#include "strakebook/steel/assess/statistics.h"

namespace strakebook::assess {

namespace {

/// The places of a zone that are judged: its lowest plate reading, then its worst pit.
std::vector<Spot> spots_of(const survey::Survey &survey, const policy::Policy &policy, const Assessment &so_far,
                           std::optional<std::size_t> mark, std::optional<std::size_t> pit) {
  std::vector<Spot> spots;
  if (mark) spots.push_back(plate_spot(survey, policy, so_far.gauges, so_far.marks[*mark]));
  if (pit) spots.push_back(pit_spot(survey, policy, so_far.gauges, so_far.pits[*pit]));
  return spots;
}

/// Every place of a zone that is judged.
std::vector<Spot> all_spots(const survey::Survey &survey, const policy::Policy &policy, const Assessment &so_far,
                            const std::vector<std::size_t> &marks, const std::vector<std::size_t> &pits) {
  std::vector<Spot> spots;
  for (const std::size_t i : marks)
    if (so_far.marks[i].used) spots.push_back(plate_spot(survey, policy, so_far.gauges, so_far.marks[i]));
  for (const std::size_t i : pits) spots.push_back(pit_spot(survey, policy, so_far.gauges, so_far.pits[i]));
  return spots;
}

const Subject *worst_of(const std::vector<Subject> &subjects) {
  return subjects.empty() ? nullptr : &*std::ranges::min_element(subjects, {}, &Subject::judged);
}

std::vector<std::string> with_verdict(const Subject &subject, Verdict verdict) {
  std::vector<std::string> ids;
  for (const CriterionResult &result : subject.results)
    if (result.verdict == verdict) ids.push_back(result.criterion);
  return ids;
}

void find_conflict(ZoneResult &zone) {
  std::vector<Subject> torn;
  for (const Subject &subject : zone.subjects)
    if (!with_verdict(subject, Verdict::falls_short).empty() && !with_verdict(subject, Verdict::meets).empty())
      torn.push_back(subject);
  const Subject *worst = worst_of(torn);
  if (!worst) return;
  zone.conflict = true;
  zone.conflict_at = worst->id;
  zone.short_of = with_verdict(*worst, Verdict::falls_short);
  zone.met = with_verdict(*worst, Verdict::meets);
}

bool too_few(const Count &count, const policy::Policy &policy) {
  return count.used == 0 || count.used < policy.least_marks || Ratio{count.used, count.planned} < policy.least_read;
}

struct Figures {
  std::vector<Length> remaining, judged;
};

Figures used_figures(const Assessment &so_far, const std::vector<std::size_t> &marks) {
  Figures figures;
  for (const std::size_t i : marks)
    if (so_far.marks[i].used) {
      figures.remaining.push_back(so_far.marks[i].remaining);
      figures.judged.push_back(so_far.marks[i].judged());
    }
  return figures;
}

void climb_ladder(ZoneResult &result, const survey::Survey &survey, const policy::Policy &policy,
                  const std::vector<Length> &used) {
  const Subject *worst = worst_of(result.subjects);
  if (result.too_few || !worst) return;
  const bool under_pit = worst->kind == Subject::Kind::pit;
  Suggestion found = suggest(policy, {worst->judged(), under_pit, result.extent}, result.highest_original, used);
  result.rung = std::move(found.rung);
  result.suggests_extensive = found.extensive;
  result.share_at_rung = found.share_at_rung;
  result.suggested = std::move(found.actions);
  const auto decision = std::ranges::find(survey.decisions, result.zone, &survey::Decision::zone);
  result.departs = decision != survey.decisions.end() && !result.rung.empty() &&
                   std::ranges::find(result.suggested, decision->action) == result.suggested.end();
}

/// The figure beside a pit is a reading of the same plate, and bounds the original from below as any other does.
std::optional<Length> thickest(const survey::Survey &survey, std::optional<Length> at_marks, const std::vector<std::size_t> &pits) {
  std::optional<Length> found = at_marks;
  for (const std::size_t i : pits) found = std::max(found.value_or(Length{}), survey.pits[i].adjacent.value);
  return found;
}

void set_originals(ZoneResult &result, const survey::Zone &zone, const policy::Policy &policy) {
  result.weak_basis = weak_basis(zone, policy);
  result.told = told(zone.original);
  result.tolerances = tolerances_of(zone, policy);
  if (result.weak_basis) result.nominals = nominals(zone, policy, result.thickest);
  result.highest_original = highest_original(zone, result.nominals, result.weak_basis, result.thickest);
}

Wastage wastage(const ZoneResult &zone, const survey::Zone &written, const policy::Policy &policy, int n, std::string at,
                Ratio remaining_nm) {
  Wastage result{.n = n, .at = std::move(at), .remaining_nm = remaining_nm, .share = loss_share(written, policy, remaining_nm)};
  if (!zone.weak_basis) return result;
  const ShareRange range = over_alive(zone.nominals, remaining_nm);
  result.alive_low = range.low;
  result.alive_high = range.high;
  return result;
}

Ratio mean_nm(const std::vector<Length> &figures) {
  std::int64_t sum_nm = 0;
  for (const Length figure : figures) sum_nm += figure.nm();
  return base::reduced({sum_nm, static_cast<std::int64_t>(figures.size())});
}

/// What the zone's place of that kind is judged by. It has one.
Length judged_of(const ZoneResult &zone, Subject::Kind kind) {
  return std::ranges::find(zone.subjects, kind, &Subject::kind)->judged();
}

/// General, local and under the worst pit, kept apart; each of what is judged.
void set_wastage(ZoneResult &result, const survey::Zone &zone, const policy::Policy &policy, const std::vector<Length> &judged,
                 std::size_t pits) {
  if (!judged.empty()) {
    result.general = wastage(result, zone, policy, result.count.used, {}, mean_nm(judged));
    result.local = wastage(result, zone, policy, result.count.used, result.worst, {judged_of(result, Subject::Kind::plate).nm(), 1});
  }
  if (result.worst_pit)
    result.under_pit = wastage(result, zone, policy, static_cast<int>(pits), *result.worst_pit,
                               {judged_of(result, Subject::Kind::pit).nm(), 1});
  const Subject *worst = worst_of(result.subjects);
  if (!worst) return;
  const auto &least = worst->kind == Subject::Kind::pit ? result.under_pit : result.local;
  result.alive_low = least->alive_low;
  result.alive_high = least->alive_high;
}

void set_statistics(ZoneResult &result, const survey::Survey &survey, const Tally &all, std::optional<std::size_t> pit) {
  result.count = all.count;
  result.min = all.min;
  result.max = all.max;
  result.mean_nm = all.mean_nm;
  if (all.least) result.least = survey.marks[*all.least].id();
  if (all.worst) result.worst = survey.marks[*all.worst].id();
  if (pit) result.worst_pit = survey.pits[*pit].id;
}

} // namespace

ZoneResult assess_zone(const survey::Survey &survey, const policy::Policy &policy, const Assessment &so_far,
                       const survey::Zone &zone) {
  ZoneResult result{.zone = zone.id};
  const auto marks = marks_of_zone(survey, zone.id);
  auto pits = pits_of_zone(survey, zone.id);
  std::erase_if(pits, [&](std::size_t i) { return !so_far.pits[i].doubler.empty(); }); // the hull's own
  const Tally all = tally(survey, policy, so_far.gauges, so_far.marks, marks);
  const auto pit = worst_pit(survey, policy, so_far.gauges, so_far.pits, pits);
  set_statistics(result, survey, all, pit);

  const auto limits = limits_for(survey, zone, policy, so_far.criteria, so_far.workings);
  for (const Spot &spot : spots_of(survey, policy, so_far, all.worst, pit))
    result.subjects.push_back(against(spot, limits));
  for (const Limit &limit : limits) result.criteria.push_back(applicability(limit));
  if (std::ranges::any_of(limits, [](const Limit &limit) { return !limit.others.empty(); }))
    result.read_otherwise = read_otherwise(all_spots(survey, policy, so_far, marks, pits), limits);
  find_conflict(result);

  result.thickest = thickest(survey, result.max, pits);
  set_originals(result, zone, policy);
  const Figures used = used_figures(so_far, marks);
  set_wastage(result, zone, policy, used.judged, pits.size());
  result.pitting = pitting_of(survey, policy, zone, result);
  result.extent = pitting_extent(zone, !pits.empty(), result.pitting.spacing, policy.extent);
  result.too_few = too_few(result.count, policy);
  result.indicative = std::ranges::any_of(marks, [&](std::size_t i) { return so_far.marks[i].indicative; }) ||
                      std::ranges::any_of(pits, [&](std::size_t i) { return so_far.pits[i].indicative; });
  result.statistics = statistics_of(used.remaining, policy.statistics); // beside minimum and mean, which are as displayed
  climb_ladder(result, survey, policy, used.judged);
  return result;
}

} // namespace strakebook::assess
