#include <algorithm>

#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/survey/reach.h"

/// No plate is laid over a doubler: neither by a recommendation, nor by a schedule item, nor by a decision.
namespace strakebook::review {

namespace {

/// Something that is to be done somewhere.
struct Work {
  std::string what; ///< "recommendation 1"
  const std::string &action;
  const survey::Reach &at;
  const base::SourceSpan &span;
};

std::vector<Work> all_work(const survey::Survey &survey) {
  std::vector<Work> out;
  for (const survey::Recommendation &item : survey.recommendations)
    out.push_back({"recommendation " + item.id, item.action, item.at, item.span});
  for (const survey::SteelworkItem &item : survey.steelwork)
    out.push_back({"schedule item " + item.id, item.action, item.at, item.span});
  return out;
}

bool lays_doubler(const policy::Policy &policy, const std::string &action) {
  const auto found = policy.actions.find(action);
  return found != policy.actions.end() && found->second.doubler;
}

Finding over(const std::string &what, const std::string &action, const std::string &doubler, const base::SourceSpan &span) {
  return {base::Code::doubler_on_doubler, span, what + ": \"" + action + "\" would lie over the doubler " + doubler,
          "no doubler over a doubler: another action, or a place clear of " + doubler,
          "an action that takes the doubler off first, or at: a reach beside it"};
}

void check_work(Findings &found, const Subject &subject, const Work &work) {
  const auto &survey = subject.survey;
  if (!lays_doubler(subject.policy, work.action) || survey.doublers.empty()) return;
  const base::SourceSpan &span = nearest(work.at.span, nearest(work.span, survey.span));
  if (!survey::written(work.at)) {
    found.push_back({base::Code::doubler_on_doubler, span,
                     work.what + ": \"" + work.action + "\" has no place, and there are doublers that it may not lie over",
                     "a place clear of every doubler", "at: a reach beside the doublers"});
    return;
  }
  for (const survey::Doubler &doubler : survey.doublers)
    if (survey::overlap(survey, work.at, doubler.over)) found.push_back(over(work.what, work.action, doubler.id, span));
}

/// A decision is for its whole zone, unless an item of the same action says where in it.
bool placed(const survey::Survey &survey, const std::vector<Work> &all, const survey::Decision &decision) {
  const survey::Reach zone{.zone = decision.zone};
  return std::ranges::any_of(all, [&](const Work &work) {
    return work.action == decision.action && survey::written(work.at) && survey::overlap(survey, work.at, zone);
  });
}

void check_decision(Findings &found, const Subject &subject, const std::vector<Work> &all, const survey::Decision &decision) {
  if (!lays_doubler(subject.policy, decision.action) || placed(subject.survey, all, decision)) return;
  for (const survey::Doubler &doubler : subject.survey.doublers)
    if (survey::overlap(subject.survey, {.zone = decision.zone}, doubler.over))
      found.push_back(over("the decision on zone " + decision.zone, decision.action, doubler.id,
                           nearest(decision.span, subject.survey.span)));
}

} // namespace

Findings doublers(const Subject &subject) {
  Findings found;
  const auto all = all_work(subject.survey);
  for (const Work &work : all) check_work(found, subject, work);
  for (const survey::Decision &decision : subject.survey.decisions) check_decision(found, subject, all, decision);
  return found;
}

} // namespace strakebook::review
