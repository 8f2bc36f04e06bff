#include <algorithm>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/works/works.h"

/// Places that do not meet the limit of their zone, and that nothing recommended or scheduled covers.
namespace strakebook::review {

namespace {

std::string what_stands_there(const works::Area &area) {
  return area.kind == works::Area::Kind::falls_short ? "falls short of the limit of its zone" : "is too close to the limit of its zone to call";
}

/// The decision that names the zone's limit is missing, or an adverse one names none: that is asked for elsewhere.
bool asked_for_first(const Subject &subject, const works::Area &area) {
  const auto *decision = decision_of(subject.survey, area.zone);
  if (decision == nullptr) return true;
  const auto action = subject.policy.actions.find(decision->action);
  return decision->criterion.empty() && action != subject.policy.actions.end() && action->second.adverse;
}

} // namespace

Findings uncovered(const Subject &subject) {
  if (subject.survey.report.state == survey::State::preliminary) return {}; // it may carry no recommendation
  Findings found;
  for (const works::Area &area : subject.outlook.works.areas) {
    if (area.uncovered.empty() || asked_for_first(subject, area)) continue;
    const bool least = std::ranges::find(area.uncovered, area.at) != area.uncovered.end();
    const std::string at = least ? area.at : area.uncovered.front();
    const auto others = area.uncovered.size() - 1;
    const std::string more = others == 0 ? std::string() : " (and " + std::to_string(others) + " more about it)";
    const auto *zone = survey::zone_of(subject.survey, area.zone);
    found.push_back(to_acknowledge(base::Code::area_uncovered, nearest(zone->span, subject.survey.span), "uncovered " + at,
                                   at + more + " " + what_stands_there(area) + ", and no recommendation or schedule item covers it",
                                   "a recommendation whose reach covers it, or the reason why there is none"));
  }
  return found;
}

} // namespace strakebook::review
