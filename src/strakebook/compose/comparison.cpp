#include "strakebook/compose/chapters.h"
#include "strakebook/compose/comparison_parts.h"
#include "strakebook/compose/looks.h"

/// Comparison with earlier surveys: what the surveyor knows of them, then place by place.
namespace strakebook::compose {

content::Section comparison(const Scope &scope) {
  auto out = section_of(scope);
  auto &to = out.blocks;
  append(to, paragraphs(scope, scope.survey().previous_survey, look::text));
  if (scope.outlook().history.surveys.empty()) return out;
  Numbering numbering;
  to.push_back(earlier_surveys_table(scope, numbering));
  to.push_back(changes_table(scope, numbering));
  append(to, changes_in_words(scope));
  append(to, changes_figure(scope, numbering));
  to.push_back(places_table(scope, numbering));
  append(to, not_found_again(scope));
  return out;
}

} // namespace strakebook::compose
