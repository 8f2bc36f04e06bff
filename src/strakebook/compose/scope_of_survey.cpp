#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// Instructions and scope: who asked for what, and who may read the answer.
namespace strakebook::compose {

namespace {

std::vector<content::Block> listed(const Scope &scope, std::string head,
                                   const std::vector<survey::Words> &all, bool numbered) {
  std::vector<content::Block> out = {item_heading(std::move(head))};
  if (all.empty()) {
    out.push_back(paragraph(not_given(scope), look::text));
    return out;
  }
  content::List list{.items = {}, .numbered = numbered, .text_style = look::text};
  for (const auto &one : all)
    list.items.push_back(prose(scope, one.text));
  out.push_back(block(std::move(list)));
  return out;
}

Inlines readers(const Scope &scope) {
  std::vector<std::string> all;
  for (const auto &one : scope.survey().instructions.readers)
    all.push_back(one.text);
  return all.empty() ? not_given(scope) : content::plain(join_and(scope, all));
}

} // namespace

content::Section scope_of_survey(const Scope &scope) {
  const auto &given = scope.survey().instructions;
  auto out = section_of(scope);
  Entries entries;
  add_answer(scope, entries, scope.say("scope.client"), given.client);
  add_answer(scope, entries, scope.say("scope.purpose"), given.purpose);
  add_answer(scope, entries, scope.say("scope.how"), given.how);
  add_date(scope, entries, scope.say("scope.on"), given.on);
  add_answer(scope, entries, scope.say("scope.terms"), given.terms);
  add(entries, scope.say("scope.readers"), readers(scope));
  add_answer(scope, entries, scope.say("scope.reliance"), given.reliance);
  out.blocks.push_back(keys(std::move(entries), look::plain_keys, 2));
  append(out.blocks, listed(scope, scope.say("scope.questions"), given.questions, true));
  append(out.blocks, listed(scope, scope.say("scope.exclusions"), given.exclusions, false));
  return out;
}

} // namespace strakebook::compose
