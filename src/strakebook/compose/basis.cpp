#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/signature.h"

/// Basis of opinion, declaration and signature.
namespace strakebook::compose {

content::Section basis(const Scope &scope) {
  const auto &who = scope.survey().surveyor;
  auto out = section_of(scope);
  Entries entries;
  add_answer(scope, entries, scope.say("basis.measured"), who.measured_by);
  add_answer(scope, entries, scope.say("basis.witnessed"), who.witnessed_by);
  add_answer(scope, entries, scope.say("basis.supervised"), who.supervised_by);
  add_answer(scope, entries, scope.say("basis.literature"), who.literature);
  add_answer(scope, entries, scope.say("basis.independence"), who.independence);
  out.blocks.push_back(keys(std::move(entries), look::cover_keys, 2));
  out.blocks.push_back(paragraph(content::plain(scope.say("basis.statement")), look::text));
  append(out.blocks, declared_and_signed(scope, &who.signed_at, who.signed_on, "signature"));
  return out;
}

} // namespace strakebook::compose
