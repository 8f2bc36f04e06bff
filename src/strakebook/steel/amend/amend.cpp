#include "strakebook/steel/amend/amend.h"

#include <algorithm>
#include <iterator>

#include "strakebook/steel/amend/decides.h"
#include "strakebook/steel/amend/marks.h"
#include "strakebook/steel/amend/reasons.h"
#include "strakebook/steel/amend/things.h"
#include "strakebook/steel/amend/verdicts.h"

namespace strakebook::amend {

bool decides(const Change &change) {
  constexpr std::string_view deciding[] = {"action", "criterion", "class", "by", "now", "refloat", "next-survey-by"};
  const auto is_deciding = [&](const Difference &one) { return std::ranges::find(deciding, one.field) != std::end(deciding); };
  return change.kind <= Kind::answer && (change.how != How::changed || std::ranges::any_of(change.differences, is_deciding));
}

bool Changes::decision_changed() const { return std::ranges::any_of(all, decides); }

Changes compare(const Edition &before, const Edition &after) {
  Changes found{.all = changed_things(before, after), .moved = moved_verdicts(before, after), .stands = {}};
  std::ranges::move(changed_marks(before, after), std::back_inserter(found.all));
  std::ranges::stable_sort(found.all, {}, &Change::kind);
  found.stands = standing_decisions(before, after, found.moved);
  if (after.survey.amendment) give_reasons(found, *after.survey.amendment);
  return found;
}

} // namespace strakebook::amend
