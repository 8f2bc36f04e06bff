#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/subjects.h"

/// Limitations: each names an area, what it prevented and what would cure it.
namespace strakebook::compose {

using content::plain;

namespace {

std::vector<content::Block> one(const Scope &scope, const survey::Limitation &limitation) {
  Entries entries;
  add_answer(scope, entries, scope.say("limitations.area"), limitation.area);
  add(entries, scope.say("limitations.where"), plain(reach_words(scope, limitation.at)));
  add_answer(scope, entries, scope.say("limitations.why"), limitation.why);
  add_answer(scope, entries, scope.say("limitations.prevents"), limitation.prevents);
  add_answer(scope, entries, scope.say("limitations.cure"), limitation.cure);
  return {item_heading(scope.say("limitations.head", {{"n", limitation.id}}), limitation_id(limitation.id)),
          keys(std::move(entries), look::plain_keys)};
}

/// Counts only: what they mean is the surveyor's to say.
content::Block coverage(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  std::vector<std::string> parts;
  for (const auto &[status, number] : count.not_read)
    if (number > 0)
      parts.push_back(scope.say("limitations.count",
                                {{"n", std::to_string(number)}, {"status", status_word(scope, status)}}));
  if (count.rejected > 0)
    parts.push_back(
        scope.say("limitations.count", {{"n", std::to_string(count.rejected)},
                                        {"status", status_word(scope, survey::Status::rejected)}}));
  const std::string left_out =
      parts.empty() ? scope.say("limitations.none-left-out") : join_and(scope, parts);
  return paragraph(plain(scope.say("limitations.coverage", {{"planned", std::to_string(count.planned)},
                                                            {"read", std::to_string(count.read)},
                                                            {"left-out", left_out}})),
                   look::text);
}

std::optional<content::Block> density(const Scope &scope) {
  const auto &per_m2 = scope.assessment().marks_per_m2;
  if (!per_m2)
    return std::nullopt;
  const std::string n = base::to_text(base::round_to(*per_m2, 1));
  return paragraph(plain(scope.assessment().spot_check ? scope.say("limitations.spot-check", {{"n", n}})
                                                       : scope.say("limitations.density", {{"n", n}})),
                   look::text);
}

} // namespace

content::Section limitations(const Scope &scope) {
  auto out = section_of(scope);
  out.blocks.push_back(coverage(scope));
  if (auto more = density(scope))
    out.blocks.push_back(std::move(*more));
  if (scope.survey().limitations.empty())
    out.blocks.push_back(paragraph(not_given(scope), look::text));
  for (const auto &limitation : scope.survey().limitations)
    append(out.blocks, one(scope, limitation));
  return out;
}

} // namespace strakebook::compose
