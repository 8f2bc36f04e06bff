#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"

/// Comparison with an earlier survey: what the surveyor knows of one, in the surveyor's words.
namespace strakebook::compose {

content::Section comparison(const Scope &scope) {
  auto out = section_of(scope);
  append(out.blocks, paragraphs(scope, scope.survey().previous_survey, look::text));
  return out;
}

} // namespace strakebook::compose
