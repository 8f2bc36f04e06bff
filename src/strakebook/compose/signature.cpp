#include "strakebook/compose/signature.h"

#include <algorithm>
#include <iterator>

#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

namespace strakebook::compose {

content::Block signature(const Scope &scope, std::vector<content::Block> last_words, const survey::Words *place,
                         const survey::Given<base::Date> &day, std::string id) {
  const auto &who = scope.survey().surveyor;
  Entries entries;
  add_answer(scope, entries, scope.say("basis.name"), who.name);
  add_answer(scope, entries, scope.say("basis.qualification"), who.qualification);
  add_answer(scope, entries, scope.say("basis.body"), who.body);
  if (place != nullptr)
    add_answer(scope, entries, scope.say("basis.place"), *place);
  add_date(scope, entries, scope.say("basis.date"), day);
  std::vector<content::Block> blocks = std::move(last_words);
  append(blocks, {block(content::Space{look::signature_gap}), block(content::Rule{look::signature_rule}),
                  paragraph(content::soft(scope.say("basis.signature")), look::note),
                  keys(std::move(entries), look::cover_keys, 2)});
  return block(content::Together{std::move(blocks)}, std::move(id));
}

std::vector<content::Block> declared_and_signed(const Scope &scope, const survey::Words *place, const survey::Given<base::Date> &day,
                                                std::string id) {
  std::vector<content::Block> out = {item_heading(scope.say("basis.declaration"))};
  auto declaration = paragraphs(scope, scope.survey().surveyor.declaration, look::text);
  const auto last = declaration.end() - std::min<std::ptrdiff_t>(1, std::ssize(declaration));
  std::vector<content::Block> last_words(last, declaration.end());
  declaration.erase(last, declaration.end());
  append(out, std::move(declaration));
  out.push_back(signature(scope, std::move(last_words), place, day, std::move(id)));
  return out;
}

} // namespace strakebook::compose
