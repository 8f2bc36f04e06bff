#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/checks.h"
#include "strakebook/compose/crossing.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/outcomes.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"

/// Recommendations: each with its class, deadline, reason, ladder row, alternative, feasibility and proof.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

/// The ladder's row in each zone that the item touches, in the house's words, and whether the item follows
/// it.
Inlines ladder_line(const Scope &scope, const survey::Recommendation &item) {
  Inlines out;
  for (const auto &zone : zones_of(scope, item.at)) {
    const auto &result = assess::zone_result(scope.assessment(), zone);
    const auto words = ladder_words(scope, result);
    if (!words)
      continue;
    if (!out.empty())
      out.emplace_back(content::LineBreak{});
    const bool follows = std::ranges::find(result.suggested, item.action) != result.suggested.end();
    const base::Fill action{"action", action_name(scope, item.action)};
    const std::string verdict = item.action.empty() ? std::string()
                                : follows           ? scope.say("ladder.followed", {action})
                                                    : scope.say("ladder.not-the-row", {action});
    out = std::move(out) +
          scope.tell("recommendations.ladder-line", {{"zone", plain(zone_name(scope, zone))},
                                                     {"when", plain(words->when)},
                                                     {"suggests", content::italic(words->suggests)},
                                                     {"verdict", plain(verdict)}});
  }
  return out.empty() ? not_given(scope) : out;
}

Block answers(const Scope &scope, const survey::Recommendation &item) {
  Entries entries;
  Inlines reason = answer_to(scope, item.reason);
  if (!item.evidence.empty())
    reason = reason + plain(" ") + evidence_list(scope, item.evidence);
  add(entries, scope.say("recommendations.reason"), std::move(reason));
  add(entries, scope.say("recommendations.ladder"), ladder_line(scope, item));
  add_if_given(scope, entries, scope.say("recommendations.alternative"), item.alternative);
  add_answer(scope, entries, scope.say("recommendations.feasible"), item.feasible);
  add_answer(scope, entries, scope.say("recommendations.binds"), item.binds);
  add_answer(scope, entries, scope.say("recommendations.proof"), item.proof);
  if (outcome_words(scope, item.id).empty()) // an addendum knows better
    add_if_given(scope, entries, scope.say("recommendations.status"), item.status);
  if (auto pictures = photos_of_item(scope, item.id); !pictures.empty())
    add(entries, scope.say("recommendations.photographs"), std::move(pictures));
  if (auto steel = steelwork_of_item(scope, item.id); !steel.empty())
    add(entries, scope.say("recommendations.steelwork"), std::move(steel));
  return keys(std::move(entries), look::item_keys);
}

std::vector<Block> side(const Scope &scope, const survey::Recommendation &item) {
  Inlines line = scope.tell("recommendations.class",
                            {{"class", item.klass.empty() ? not_given(scope) : content::strong(item.klass)},
                             {"deadline", deadline_words(scope, item)}});
  std::vector<Block> out = {paragraph(std::move(line), look::class_line)};
  if (const auto became = outcome_words(scope, item.id); !became.empty())
    out.push_back(paragraph(content::strong(became), look::class_line));
  if (item.hazards.given())
    out.push_back(
        block(content::Paragraph{prose(scope, item.hazards.text), look::caution, look::caution_bar}));
  for (const auto *caution : cautions_of_action(scope, item.action)) {
    Inlines text = scope.tell("recommendations.caution", {{"title", content::strong(caution->title)},
                                                          {"page", page_link("caution/" + caution->id)}});
    out.push_back(block(content::Paragraph{std::move(text), look::caution, look::caution_bar}));
  }
  return out;
}

/// `before` stays with the item: the lead under the section head with the first one.
Block item(const Scope &scope, const survey::Recommendation &one, std::vector<Block> before) {
  content::Heading title{.level = 3,
                         .number = {},
                         .text = prose(scope, one.title.text),
                         .in_contents = false,
                         .text_style = look::item_title};
  std::vector<Block> middle = {block(std::move(title), item_id(one.id), one.span),
                               paragraph(plain(reach_words(scope, one.at)), look::item_place),
                               answers(scope, one)};
  std::vector<Block> number = {paragraph(plain(one.id), look::item_number)};
  before.push_back(block(content::Rule{look::rule_item}));
  before.push_back(
      block(content::Columns{look::item_grid, {std::move(number), std::move(middle), side(scope, one)}}));
  return block(content::Together{std::move(before)});
}

} // namespace

content::Section recommendations(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  if (scope.survey().recommendations.empty())
    out.blocks.push_back(paragraph(plain(scope.say("recommendations.none")), look::text));
  std::vector<Block> before = {paragraph(plain(scope.say("recommendations.lead")), look::lead)};
  for (const auto &one : scope.survey().recommendations) {
    out.blocks.push_back(item(scope, one, std::move(before)));
    before.clear();
  }
  append(out.blocks, carried_items(scope, numbering));
  return out;
}

} // namespace strakebook::compose
