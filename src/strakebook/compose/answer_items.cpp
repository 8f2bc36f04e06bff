#include <algorithm>

#include "strakebook/compose/answer_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/outcomes.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"

/// The recommendations on page one, by class, and what was read.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

Block eyebrow(std::string words) { return paragraph(plain(std::move(words)), look::eyebrow); }

namespace {

/// A date where there is one: the words that go with it stand beside the item.
content::Row item_row(const Scope &scope, const survey::Recommendation &item) {
  const std::string target = item_id(item.id);
  Inlines deadline = item.by                 ? plain(date(scope, item.by->value))
                     : item.deadline.given() ? prose(scope, item.deadline.text)
                                             : not_given(scope);
  Inlines title = link(target, item.title.text);
  if (const auto became = outcome_words(scope, item.id); !became.empty())
    title = std::move(title) + content::soft(scope.say("outcome.after-title", {{"outcome", became}}));
  return row({cell(content::strong(item.id)), cell(item.klass), cell(std::move(title)), cell(answer_to(scope, item.binds)),
              cell(reach_words(scope, item.at)), cell(std::move(deadline)), cell(page_link(target))});
}

} // namespace

std::vector<Block> items(const Scope &scope) {
  auto all = scope.survey().recommendations;
  std::vector<Block> out = {eyebrow(scope.say("answer.items"))};
  if (all.empty()) {
    out.push_back(paragraph(plain(scope.say("answer.no-items")), look::answer));
    return out;
  }
  std::ranges::stable_sort(all, {}, &survey::Recommendation::klass);
  auto table = unlabelled_table(look::items_table,
                                {column({}), column(scope.say("answer.class")),
                                 stretching(scope.say("answer.what")), stretching(scope.say("answer.who")),
                                 column(scope.say("answer.where")), column(scope.say("answer.deadline")), column({}, Align::right)});
  std::vector<content::Row> rows;
  for (const auto &item : all)
    rows.push_back(item_row(scope, item));
  add_rows(table, std::move(rows));
  out.push_back(block(std::move(table), "table/items"));
  return out;
}

namespace {

/// The areas of the limitations beside the most important one, so that page one names all that was not seen.
std::string other_limitations(const Scope &scope) {
  std::vector<std::string> areas;
  for (const auto &one : scope.survey().limitations)
    if (one.id != scope.survey().answer.limitation.text)
      areas.push_back(one.area.text);
  return areas.empty() ? std::string() : scope.say("answer.other-limitations", {{"areas", join_and(scope, areas)}});
}

} // namespace

Block counts(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  return paragraph(plain(scope.say("answer.counts", {{"planned", std::to_string(count.planned)},
                                                     {"read", std::to_string(count.read)},
                                                     {"rejected", std::to_string(count.rejected)},
                                                     {"not-read", std::to_string(not_read(count))},
                                                     {"pits", std::to_string(scope.survey().pits.size())}}) +
                         other_limitations(scope)),
                   look::note);
}

} // namespace strakebook::compose
