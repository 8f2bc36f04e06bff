#include "strakebook/compose/chapters.h"
#include "strakebook/compose/coating_parts.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// Coating and anodes, as found and as recommended.
namespace strakebook::compose {

using content::plain;

namespace {

/// "4 in number, of magnesium, fitted 1 March 2024, ...": what was written, and no more.
Inlines fitted_words(const Scope &scope, const survey::AnodesFitted &fitted) {
  std::vector<std::string> parts;
  if (fitted.count)
    parts.push_back(scope.say("coating.fitted-count", {{"n", std::to_string(*fitted.count)}}));
  if (fitted.metal.given())
    parts.push_back(scope.say("coating.fitted-metal", {{"metal", fitted.metal.text}}));
  if (fitted.on)
    parts.push_back(scope.say("coating.fitted-on", {{"date", date(scope, fitted.on->value)}}));
  if (fitted.worn_percent)
    parts.push_back(scope.say("coating.fitted-worn", {{"percent", figure(*fitted.worn_percent)}}));
  if (fitted.bonded.given())
    parts.push_back(scope.say("coating.fitted-bonded", {{"bonded", fitted.bonded.text}}));
  return parts.empty() ? not_given(scope) : plain(base::joined(parts, scope.say("voice.list-between")));
}

} // namespace

content::Section coating(const Scope &scope) {
  const auto &found = scope.survey().coating;
  auto out = section_of(scope);
  Numbering numbering;
  Entries entries;
  add_answer(scope, entries, scope.say("coating.found"), found.coating);
  add_answer(scope, entries, scope.say("coating.anodes"), found.anodes);
  if (found.fitted) {
    add(entries, scope.say("coating.fitted"), fitted_words(scope, *found.fitted));
    add_if_given(scope, entries, scope.say("coating.fitted-answer"), found.fitted->answer);
  }
  add_answer(scope, entries, scope.say("coating.recommended"), found.recommended);
  out.blocks.push_back(keys(std::move(entries), look::plain_keys));
  if (!found.schemes.empty())
    out.blocks.push_back(schemes_table(scope, numbering));
  if (found.plan)
    out.blocks.push_back(plan_table(scope, numbering));
  append(out.blocks, protection_sentences(scope));
  return out;
}

} // namespace strakebook::compose
