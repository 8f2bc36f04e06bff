#include <algorithm>

#include "strakebook/compose/afloat.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/steelwork_parts.h"

/// Schedule of steelwork: what a yard prices, and the places that it is drawn up for. A repair outline, not a design.
namespace strakebook::compose {

using content::plain;

namespace {

using Items = std::vector<works::Item>;

std::vector<std::string> ids_of(const Items &items, bool weighed) {
  std::vector<std::string> out;
  for (const auto &item : items)
    if (item.adds_steel && item.net_kg.has_value() == weighed) out.push_back(item.id);
  return out;
}

/// What the items weigh together, and which could not be weighed.
std::optional<Sentence> weight_in_all(const Scope &scope) {
  const auto &items = scope.outlook().works.items;
  const auto weighed = ids_of(items, true), not_weighed = ids_of(items, false);
  std::optional<Sentence> text;
  if (!weighed.empty()) {
    double sum = 0;
    for (const auto &item : items) sum += item.net_kg.value_or(0);
    text = scope.tell_computed("works.total", {{"items", plain(join_and(scope, weighed))}, {"kg", content::strong(tied(rounded(sum, 0), "kg"))}});
  }
  if (!not_weighed.empty())
    add_sentence(text, scope.tell_computed("works.not-weighed", {{"items", plain(join_and(scope, not_weighed))}}));
  return text;
}

} // namespace

content::Section steelwork(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  if (scope.survey().steelwork.empty()) {
    out.blocks.push_back(paragraph(plain(scope.say("steelwork.none")), look::text));
  } else {
    out.blocks.push_back(schedule(scope, numbering));
    if (const auto weight = weight_in_all(scope))
      out.blocks.push_back(computed(scope, *weight, scope.say("works.weight-rule", {{"density", scope.policy().steel_density_kg_m2_mm}})));
    append(out.blocks, sketches(scope, numbering));
  }
  append(out.blocks, areas_gathered(scope, numbering));
  out.blocks.push_back(afloat_table(scope, numbering));
  return out;
}

} // namespace strakebook::compose
