#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"

/// Coating and anodes, as found and as recommended.
namespace strakebook::compose {

content::Section coating(const Scope &scope) {
  const auto &found = scope.survey().coating;
  auto out = section_of(scope);
  out.blocks.push_back(item_heading(scope.say("coating.found")));
  append(out.blocks, paragraphs(scope, found.coating, look::text));
  out.blocks.push_back(item_heading(scope.say("coating.anodes")));
  append(out.blocks, paragraphs(scope, found.anodes, look::text));
  out.blocks.push_back(item_heading(scope.say("coating.recommended")));
  append(out.blocks, paragraphs(scope, found.recommended, look::text));
  return out;
}

} // namespace strakebook::compose
