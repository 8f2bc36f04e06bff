#include "strakebook/steel/survey/photo_use.h"

#include "strakebook/steel/survey/pointer_scan.h"
#include "strakebook/steel/survey/texts.h"

namespace strakebook::survey {

std::set<std::string, std::less<>> photos_used(const Survey &survey) {
  std::set<std::string, std::less<>> used;
  const auto see = [&](std::string_view text) {
    for (const auto &found : scan_pointers(survey, text))
      if (found.target == Target::photo)
        used.insert(found.id);
  };
  const auto all_of = [&](const auto &findings) {
    for (const auto &finding : findings)
      used.insert(finding.photos.begin(), finding.photos.end());
  };
  const auto evidence_of = [&](const auto &opinions) {
    for (const auto &opinion : opinions)
      for (const auto &text : opinion.evidence)
        see(text);
  };
  all_of(survey.pits);
  all_of(survey.doublers);
  all_of(survey.notes);
  evidence_of(survey.decisions);
  evidence_of(survey.recommendations);
  evidence_of(survey.carried);
  for (const auto &addendum : survey.addenda)
    all_of(addendum.closes);
  each_text(survey, [&](const Words &words) { see(words.text); });
  return used;
}

} // namespace strakebook::survey
