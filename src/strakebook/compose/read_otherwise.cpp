#include "strakebook/compose/decision.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"

/// Where the text of a rule is silent: what its other readings would change in a zone.
namespace strakebook::compose {

using content::plain;

namespace {

std::string changed_places(const Scope &scope, const assess::ZoneResult &zone, const assess::ReadOtherwise &one) {
  const auto &first = one.places.front();
  const base::Fill place{"place", tied_mark(first.place)}, left{"mm", remaining_text(scope, zone.zone, first.remaining)},
      then{"then", verdict_word(scope, first.then)}, now{"now", verdict_word(scope, first.now)};
  const auto more = one.places.size() - 1;
  if (more == 0) return scope.say_computed("assessment.one-otherwise", {place, left, then, now});
  return scope.say_computed("assessment.some-otherwise", {place, left, then, now, {"more", std::to_string(more)}});
}

std::string reading_words(const Scope &scope, const policy::OtherReading &other) {
  const base::Fill limit{"mm", unit_mm(scope, limit_text(other.limit))};
  switch (other.reading) {
  case policy::RuleReading::floor_times_b: return scope.say_computed("assessment.floor-times-b", {limit});
  case policy::RuleReading::local_wear: return scope.say_computed("assessment.local-wear", {limit});
  case policy::RuleReading::local_wear_under_floor: return scope.say_computed("assessment.local-wear-under-floor", {limit});
  }
  return {};
}

/// A criterion is named where it is first spoken of.
std::string part(const Scope &scope, const assess::ZoneResult &zone, const assess::ReadOtherwise &one, bool name_it) {
  const base::Fill reading{"reading", reading_words(scope, one.reading)}, places{"places", changed_places(scope, zone, one)};
  if (!name_it) return scope.say_computed("assessment.otherwise-next", {reading, places});
  return scope.say_computed("assessment.otherwise-part", {{"criterion", criterion_name(scope, one.criterion)}, reading, places});
}

} // namespace

std::optional<content::Block> read_otherwise(const Scope &scope, const assess::ZoneResult &zone) {
  if (zone.read_otherwise.empty()) return std::nullopt;
  std::vector<std::string> parts;
  std::string_view named;
  for (const auto &one : zone.read_otherwise) {
    parts.push_back(part(scope, zone, one, one.criterion != named));
    named = one.criterion;
  }
  const auto text = scope.tell_computed(
      "assessment.otherwise", {{"readings", plain(base::joined(parts, scope.say("assessment.otherwise-between")))}});
  return computed(scope, text, scope.say("assessment.by-other-readings"), label_link("table/workings"));
}

} // namespace strakebook::compose
