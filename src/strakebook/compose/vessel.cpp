#include "strakebook/compose/chapters.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"

/// The vessel: each value with where it comes from.
namespace strakebook::compose {

namespace {

void add_fact(const Scope &scope, Entries &entries, std::string label, const survey::Fact &fact) {
  add(entries, std::move(label),
      scope.tell("voice.fact", {{"value", prose(scope, fact.text.text)},
                                {"from", content::soft(origin_words(scope, fact.from))}}));
}

void add_fact(const Scope &scope, Entries &entries, std::string label,
              const std::optional<survey::Fact> &fact) {
  if (fact)
    add_fact(scope, entries, std::move(label), *fact);
}

void add_size(const Scope &scope, Entries &entries, std::string label,
              const std::optional<survey::LengthFact> &fact) {
  if (fact)
    add_length(scope, entries, std::move(label), *fact);
}

/// Where a rule formula rests on them, silence is said to have been taken as none.
Inlines wing_voids(const Scope &scope) {
  const auto &given = scope.survey().vessel.wing_voids;
  if (given)
    return content::plain(yes_no(scope, given->value));
  return scope.assessment().workings.empty() ? not_given(scope) : content::plain(scope.say("vessel.wing-voids-taken"));
}

} // namespace

content::Section vessel(const Scope &scope) {
  const auto &boat = scope.survey().vessel;
  auto out = section_of(scope);
  Entries entries;
  add(entries, scope.say("vessel.name"), content::plain(boat.name.text));
  add_answer(scope, entries, scope.say("vessel.kind"), boat.kind);
  for (const auto &id : boat.ids)
    add_fact(scope, entries, scope.say("vessel.id"), id);
  if (boat.ids.empty())
    add(entries, scope.say("vessel.id"), not_given(scope));
  add_length(scope, entries, scope.say("vessel.length"), boat.length);
  add_length(scope, entries, scope.say("vessel.beam"), boat.beam);
  add_size(scope, entries, scope.say("vessel.draught"), boat.draught);
  add_size(scope, entries, scope.say("vessel.plated-height"), boat.plated_height);
  add_size(scope, entries, scope.say("vessel.frame-spacing"), boat.frame_spacing);
  add_size(scope, entries, scope.say("vessel.waterline-length"), boat.waterline_length);
  add_size(scope, entries, scope.say("vessel.narrowest"), boat.narrowest);
  add_fact(scope, entries, scope.say("vessel.built"), boat.built);
  add_fact(scope, entries, scope.say("vessel.builder"), boat.builder);
  add_fact(scope, entries, scope.say("vessel.construction"), boat.construction);
  add_fact(scope, entries, scope.say("vessel.use"), boat.use);
  add_fact(scope, entries, scope.say("vessel.history"), boat.history);
  add(entries, scope.say("vessel.wing-voids"), wing_voids(scope));
  add_if_given(scope, entries, scope.say("vessel.carries"), boat.carries);
  if (boat.light_scantlings)
    add(entries, scope.say("vessel.light-scantlings"), content::plain(yes_no(scope, boat.light_scantlings->value)));
  out.blocks.push_back(keys(std::move(entries), look::plain_keys, 2));
  return out;
}

} // namespace strakebook::compose
