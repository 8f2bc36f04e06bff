#include "strakebook/compose/outcomes.h"

#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/tables.h"

namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string became_word(const Scope &scope, survey::Became became) {
  switch (became) {
  case survey::Became::open:
    return scope.say("outcome.open");
  case survey::Became::closed:
    return scope.say("outcome.closed");
  case survey::Became::overtaken:
    return scope.say("outcome.overtaken");
  case survey::Became::not_seen:
    return scope.say("outcome.not-seen");
  }
  return {};
}

/// `words_said` is how the words are printed.
Inlines words_and_date(const Scope &scope, const survey::Words &words, const Inlines &words_said, const survey::Given<base::Date> &by) {
  if (words.given() && by)
    return scope.tell("recommendations.deadline-by", {{"words", words_said}, {"date", plain(date(scope, by->value))}});
  if (words.given())
    return words_said;
  return by ? plain(date(scope, by->value)) : not_given(scope);
}

/// What an earlier report said points at its own marks and pits, so nothing of it becomes a link.
content::Row carried_row(const Scope &scope, const survey::CarriedItem &one) {
  Inlines found = one.found.given() ? prose(scope, one.found.text) : Inlines{};
  if (!one.evidence.empty())
    found = std::move(found) + plain(found.empty() ? "" : " ") + evidence_list(scope, one.evidence);
  return row({cell(plain(one.from.text) + content::soft(scope.say("carried.item", {{"item", one.item.text}}))), cell(one.title.text),
              cell(one.klass.empty() ? scope.say("voice.dash") : one.klass), cell(words_and_date(scope, one.deadline, plain(one.deadline.text), one.by)),
              cell(one.now ? content::strong(became_word(scope, *one.now)) : not_given(scope)), cell(std::move(found))},
             "carried/" + one.id, one.span);
}

} // namespace

Inlines deadline_words(const Scope &scope, const survey::Recommendation &item) { return words_and_date(scope, item.deadline, prose(scope, item.deadline.text), item.by); }

std::string closing_word(const Scope &scope, survey::Closing outcome) {
  switch (outcome) {
  case survey::Closing::closed:
    return scope.say("outcome.closed");
  case survey::Closing::partly:
    return scope.say("outcome.partly");
  case survey::Closing::open:
    return scope.say("outcome.open");
  }
  return {};
}

std::string outcome_words(const Scope &scope, const std::string &recommendation) {
  const auto found = survey::outcome_of(scope.survey(), recommendation);
  if (found.addendum == nullptr)
    return {};
  const std::string word = closing_word(scope, found.item->outcome);
  const auto &day = found.item->on ? found.item->on : found.addendum->inspected;
  if (!day)
    return scope.say("outcome.by-addendum", {{"outcome", word}, {"addendum", found.addendum->id}});
  const base::Fill when{"date", date(scope, day->value)}, by{"addendum", found.addendum->id};
  return found.item->outcome == survey::Closing::open ? scope.say("outcome.open-by-addendum", {when, by})
                                                      : scope.say("outcome.on-by-addendum", {{"outcome", word}, when, by});
}

std::vector<content::Block> carried_items(const Scope &scope, Numbering &numbering) {
  if (scope.survey().carried.empty())
    return {};
  auto table = labelled_table(scope, numbering, look::steelwork_table, scope.tell("carried.caption"),
                              {stretching(scope.say("carried.from")), stretching(scope.say("carried.title")), column(scope.say("carried.class")),
                               stretching(scope.say("carried.deadline")), column(scope.say("carried.now")), stretching(scope.say("carried.found"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.survey().carried)
    rows.push_back(carried_row(scope, one));
  add_rows(table, std::move(rows));
  return {block(std::move(table), "table/carried")};
}

} // namespace strakebook::compose
