#include "strakebook/steel/amend/verdicts.h"

#include <algorithm>

namespace strakebook::amend {

using assess::Verdict;
using assess::ZoneResult;

namespace {

struct Ruling {
  Verdict verdict = Verdict::not_applicable;
  std::string at;
  base::Length margin;
};

/// Of two rulings the one that decides: the worse verdict, then the lesser margin.
bool decides(const assess::CriterionResult &result, const Ruling &so_far) {
  const auto rank = [](Verdict verdict) {
    switch (verdict) {
    case Verdict::not_applicable: return 0;
    case Verdict::meets: return 1;
    case Verdict::too_close: return 2;
    case Verdict::falls_short: return 3;
    }
    return 0;
  };
  const int is = rank(result.verdict), was = rank(so_far.verdict);
  return is > was || (is == was && is > 0 && result.margin < so_far.margin);
}

Ruling ruling(const ZoneResult &zone, const std::string &criterion) {
  Ruling found;
  for (const auto &subject : zone.subjects)
    for (const auto &result : subject.results)
      if (result.criterion == criterion && decides(result, found)) found = {result.verdict, subject.id, result.margin};
  return found;
}

const ZoneResult *zone_of(const Edition &edition, const std::string &id) {
  const auto found = std::ranges::find(edition.assessment.zones, id, &ZoneResult::zone);
  return found == edition.assessment.zones.end() ? nullptr : &*found;
}

const survey::Decision *decision_of(const Edition &edition, const std::string &zone) {
  const auto found = std::ranges::find(edition.survey.decisions, zone, &survey::Decision::zone);
  return found == edition.survey.decisions.end() ? nullptr : &*found;
}

/// Those in use today, then those in use before only.
std::vector<std::string> criteria_of(const Edition &before, const Edition &after) {
  std::vector<std::string> ids;
  for (const auto *edition : {&after, &before})
    for (const auto &criterion : edition->assessment.criteria)
      if (std::ranges::find(ids, criterion.id) == ids.end()) ids.push_back(criterion.id);
  return ids;
}

bool same_decision(const survey::Decision *before, const survey::Decision *after) {
  return before && after && before->action == after->action && before->criterion == after->criterion;
}

} // namespace

std::vector<Moved> moved_verdicts(const Edition &before, const Edition &after) {
  std::vector<Moved> moved;
  const auto criteria = criteria_of(before, after);
  for (const auto &zone : after.assessment.zones) {
    const auto *old = zone_of(before, zone.zone);
    if (!old) continue;
    for (const auto &criterion : criteria) {
      const auto was = ruling(*old, criterion), is = ruling(zone, criterion);
      if (was.verdict != is.verdict) moved.push_back({zone.zone, criterion, is.at, was.verdict, is.verdict});
    }
  }
  return moved;
}

std::vector<Stands> standing_decisions(const Edition &before, const Edition &after, const std::vector<Moved> &moved) {
  std::vector<Stands> standing;
  for (const auto &zone : after.assessment.zones) {
    const auto *old = zone_of(before, zone.zone);
    const bool rests_on_other = std::ranges::find(moved, zone.zone, &Moved::zone) != moved.end() ||
                                (old && (old->rung != zone.rung || old->suggested != zone.suggested));
    if (rests_on_other && same_decision(decision_of(before, zone.zone), decision_of(after, zone.zone))) standing.push_back({zone.zone, {}});
  }
  return standing;
}

} // namespace strakebook::amend
