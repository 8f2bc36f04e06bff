#include "strakebook/report/canonical.h"
#include "strakebook/report/opening.h"
#include "strakebook/steel/survey/closing.h"

namespace strakebook {

amend::Changes changes_between(const Case &before, const Case &after) {
  const auto then = canonical::inputs(before), now = canonical::inputs(after);
  const auto told_then = survey::without_later_addenda(before.survey), told_now = survey::without_later_addenda(after.survey);
  const auto edition = [](const survey::Survey &told, const Case &of, const std::vector<base::InputFile> &inputs) {
    return amend::Edition{told, of.assessment, of.outlook, of.house.policy, inputs};
  };
  return amend::compare(edition(told_then, before, then), edition(told_now, after, now));
}

} // namespace strakebook
