#include <algorithm>
#include <iterator>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// Basis of opinion, declaration and signature.
namespace strakebook::compose {

namespace {

/// The signature under the last words of what it signs: never alone on a page.
content::Block signature(const Scope &scope, std::vector<content::Block> last_words) {
  const auto &who = scope.survey().surveyor;
  Entries entries;
  add_answer(scope, entries, scope.say("basis.name"), who.name);
  add_answer(scope, entries, scope.say("basis.qualification"), who.qualification);
  add_answer(scope, entries, scope.say("basis.body"), who.body);
  add_answer(scope, entries, scope.say("basis.place"), who.signed_at);
  add_date(scope, entries, scope.say("basis.date"), who.signed_on);
  std::vector<content::Block> blocks = std::move(last_words);
  append(blocks, {block(content::Space{look::signature_gap}), block(content::Rule{look::signature_rule}),
                  paragraph(content::soft(scope.say("basis.signature")), look::note),
                  keys(std::move(entries), look::cover_keys, 2)});
  return block(content::Together{std::move(blocks)}, "signature");
}

} // namespace

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
  out.blocks.push_back(item_heading(scope.say("basis.declaration")));
  auto declaration = paragraphs(scope, who.declaration, look::text);
  const auto last = declaration.end() - std::min<std::ptrdiff_t>(1, std::ssize(declaration));
  std::vector<content::Block> last_words(last, declaration.end());
  declaration.erase(last, declaration.end());
  append(out.blocks, std::move(declaration));
  out.blocks.push_back(signature(scope, std::move(last_words)));
  return out;
}

} // namespace strakebook::compose
