#include <algorithm>

#include "strakebook/compose/answer_parts.h"
#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// What went wrong, and who was told of it.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

Inlines found_words(const Scope &scope, const survey::Amendment &given) {
  const Inlines by = answer_to(scope, given.found_by);
  return given.found_on ? by + plain(scope.say("voice.list-between") + date(scope, given.found_on->value)) : by;
}

/// "told by letter, 9 November 2026; acknowledged 9 November 2026".
std::string told_words(const Scope &scope, const survey::Told &told) {
  std::vector<std::string> parts;
  parts.push_back(told.how.given() ? scope.say("changes.told-how", {{"how", told.how.text}}) : scope.say("changes.told"));
  if (told.on)
    parts.push_back(date(scope, told.on->value));
  const std::string words = base::joined(parts, scope.say("voice.list-between"));
  return told.acknowledged ? scope.say("changes.acknowledged", {{"told", words}, {"date", date(scope, told.acknowledged->value)}})
                           : scope.say("changes.unacknowledged", {{"told", words}});
}

content::Block holder(const Scope &scope, const std::string &who, const survey::Told *told) {
  const Inlines words = told == nullptr ? content::italic(scope.say("changes.not-told")) : plain(told_words(scope, *told));
  return paragraph(scope.tell("changes.holder", {{"who", plain(capitalised(who))}, {"words", words}}), look::side);
}

const survey::Told *told_of(const survey::Amendment *given, const std::string &who) {
  if (given == nullptr)
    return nullptr;
  const auto found = std::ranges::find_if(given->told, [&](const survey::Told &one) { return one.who.text == who; });
  return found == given->told.end() ? nullptr : &*found;
}

bool had_it(const amend::PastIssue *past, const std::string &who) {
  return past != nullptr && std::ranges::any_of(past->recipients, [&](const survey::Recipient &one) { return one.who.text == who; });
}

} // namespace

std::vector<content::Block> cause_of_change(const Scope &scope, const survey::Amendment &given) {
  Entries entries;
  add_answer(scope, entries, scope.say("changes.cause"), given.cause);
  add(entries, scope.say("changes.found"), found_words(scope, given));
  add_answer(scope, entries, scope.say("changes.checked"), given.checked);
  return {item_heading(scope.say("changes.went-wrong")), keys(std::move(entries), look::cover_keys)};
}

std::vector<content::Block> who_had_it(const Scope &scope, const survey::Amendment *given, const amend::PastIssue *past) {
  std::vector<content::Block> out;
  if (past != nullptr)
    for (const auto &one : past->recipients)
      out.push_back(holder(scope, one.who.text, told_of(given, one.who.text)));
  if (given != nullptr)
    for (const auto &one : given->told)
      if (!had_it(past, one.who.text))
        out.push_back(holder(scope, one.who.text, &one));
  if (!out.empty())
    out.insert(out.begin(), item_heading(scope.say("changes.who")));
  return out;
}

} // namespace strakebook::compose
