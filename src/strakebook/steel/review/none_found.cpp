#include <algorithm>

#include "strakebook/steel/review/findings.h"
#include "strakebook/steel/survey/pit_blocks.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::review {

namespace {

bool says_any(std::string_view text, const std::vector<std::string> &words) {
  return std::ranges::any_of(words, [&](const std::string &word) { return says(text, word); });
}

/// Words that name the pit or doubler leave it out: "pits other than P1".
Finding denied(const Subject &subject, const survey::NoneFound &none, const std::string &id, const std::string &where) {
  return to_acknowledge(base::Code::none_found_denied, nearest(none.at.span, nearest(none.what.span, subject.survey.span)),
                        "none-found " + id, "\"" + none.what.text + "\" are said not to be found, but " + id + " is recorded " + where,
                        "a place clear of " + id + ", or words that leave it out: other than " + id);
}

/// The reach takes in a planned mark of the zone.
bool touches(const survey::Survey &survey, const survey::Reach &reach, const survey::Zone &zone) {
  return std::ranges::any_of(survey.marks, [&](const survey::Mark &mark) {
    return survey::zone_of_row(survey, mark.row).id == zone.id && survey::covers(survey, reach, mark.row, mark.station.value);
  });
}

} // namespace

Findings none_found_denied(const Subject &subject) {
  const survey::Survey &survey = subject.survey;
  const policy::Prose &prose = subject.policy.prose;
  Findings found;
  const auto once = [&](Finding finding) {
    if (std::ranges::find(found, finding.subject, &Finding::subject) == found.end()) found.push_back(std::move(finding));
  };
  for (const survey::NoneFound &none : survey.none_found) {
    if (says_any(none.what.text, prose.pits))
      for (const survey::Pit &pit : survey.pits)
        if (!says(none.what.text, pit.id) && survey::covers(survey, none.at, pit.at.row, pit.at.station.value))
          once(denied(subject, none, pit.id, "at " + pit.at.row + " " + pit.at.station.raw));
    if (says_any(none.what.text, prose.pits))
      for (const survey::Zone &zone : survey.zones)
        if (survey::pits_in_blocks(zone) && !says(none.what.text, zone.id) && touches(survey, none.at, zone))
          once(denied(subject, none, "zone " + zone.id, "with pits in its blocks"));
    if (says_any(none.what.text, prose.doublers))
      for (const survey::Doubler &doubler : survey.doublers)
        if (!says(none.what.text, doubler.id) && survey::overlap(survey, none.at, doubler.over)) once(denied(subject, none, doubler.id, "there"));
  }
  return found;
}

} // namespace strakebook::review
