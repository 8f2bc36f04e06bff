#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// Coating and anodes, as found and as recommended.
namespace strakebook::compose {

content::Section coating(const Scope &scope) {
  const auto &found = scope.survey().coating;
  auto out = section_of(scope);
  Entries entries;
  add_answer(scope, entries, scope.say("coating.found"), found.coating);
  add_answer(scope, entries, scope.say("coating.anodes"), found.anodes);
  add_answer(scope, entries, scope.say("coating.recommended"), found.recommended);
  out.blocks.push_back(keys(std::move(entries), look::plain_keys));
  return out;
}

} // namespace strakebook::compose
