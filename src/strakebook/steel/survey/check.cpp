#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "strakebook/steel/survey/copying_checks.h"
#include "strakebook/steel/survey/doubler_checks.h"
#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/pit_blocks.h"
#include "strakebook/steel/survey/pitting.h"
#include "strakebook/steel/survey/photo_use.h"
#include "strakebook/steel/survey/pointer_scan.h"
#include "strakebook/steel/survey/reader.h"
#include "strakebook/steel/survey/reading.h"
#include "strakebook/steel/survey/texts.h"

/// Checks of a whole survey that need no assessment.
namespace strakebook::survey {

using base::Code;

namespace {

/// What an earlier report said of an item, and what changed since an earlier issue: it speaks of the marks and pits there.
std::set<std::pair<int, int>> words_of_earlier_reports(const Survey &survey) {
  std::set<std::pair<int, int>> places;
  const auto add = [&](const Words &words) { places.insert({words.span.line, words.span.column}); };
  for (const auto &item : survey.carried)
    for (const auto *words : {&item.from, &item.item, &item.title, &item.deadline})
      add(*words);
  if (survey.amendment)
    for (const auto &reason : survey.amendment->changes) {
      std::ranges::for_each(reason.what, add);
      add(reason.why);
    }
  return places;
}

void check_prose(const Survey &survey, base::Diagnostics &sink) {
  const auto foreign = words_of_earlier_reports(survey);
  each_text(survey, [&](const Words &words) {
    if (foreign.contains({words.span.line, words.span.column}))
      return;
    for (const auto &lost : dangling(survey, words.text))
      sink.add({.code = Code::dangling_reference,
                .span = place_in(words.span, lost),
                .message = fmt::format("\"{}\" leads nowhere", lost),
                .expected = "a mark, pit, doubler, note, photo, item, limitation or zone of this survey",
                .write = "the name of what is meant, or other words"});
  });
}

void check_photos(const Survey &survey, base::Diagnostics &sink) {
  const auto used = photos_used(survey);
  for (const auto &photo : survey.photos) {
    if (used.contains(photo.id))
      continue;
    const auto subject = fmt::format("photo-unused {}", photo.id);
    sink.add({.severity = base::Severity::warning,
              .code = Code::photo_unused,
              .span = photo.span,
              .message = fmt::format("nothing refers to photo {}", photo.id),
              .expected = "a pit, doubler, note, evidence or text that names it",
              .write = fmt::format("photo: {} where it shows something", photo.id),
              .subject = subject});
  }
}

/// A frame on the page has one thing to say: the picture, or one reason for none.
void check_pictures(const Survey &survey, base::Diagnostics &sink) {
  for (const auto &photo : survey.photos) {
    if (photo.file.given() + photo.not_taken.given() + photo.withheld.given() < 2)
      continue;
    sink.add({.code = Code::photo_contradicted,
              .span = photo.span,
              .message = fmt::format("photo {} has {}", photo.id,
                                     photo.file.given() ? "a file and a reason for having none" : "two reasons for having none"),
              .expected = "a file, or not-taken with the reason, or withheld with the reason",
              .write = "one of the three",
              .subject = {}});
  }
}

} // namespace

void check_survey(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  base::Diagnostics found;
  check_prose(survey, found);
  check_doublers(survey, policy, found);
  check_photos(survey, found);
  check_pictures(survey, found);
  warn_of_copying(survey, policy, found);
  warn_of_pitting(survey, policy, found);
  check_pit_blocks(survey, found);
  hand_over(found, survey.span.file, sink);
}

} // namespace strakebook::survey
