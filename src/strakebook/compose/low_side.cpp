#include "strakebook/compose/low_side.h"

#include <algorithm>

namespace strakebook::compose {

using content::plain;

std::string low_text(const Scope &scope, std::string_view zone, Length low) {
  const std::string short_form = fixed_mm(low, 2), clear = remaining_text(scope, std::string(zone), low);
  return clear.size() > short_form.size() ? clear : short_form;
}

std::string judged_text(const Scope &scope, std::string_view zone, const assess::Subject &subject) {
  return subject.low ? low_text(scope, zone, *subject.low) : remaining_text(scope, std::string(zone), subject.remaining);
}

std::optional<Sentence> low_sentence(const Scope &scope, std::string_view zone, const assess::Subject &subject) {
  if (!subject.low)
    return std::nullopt;
  return scope.tell_computed("low.sentence", {{"place", plain(tied_mark(subject.id))},
                                              {"shown", plain(remaining_text(scope, std::string(zone), subject.remaining))},
                                              {"low", plain(unit_mm(scope, low_text(scope, zone, *subject.low)))}});
}

bool any_mark_lowered(const Scope &scope) {
  return std::ranges::any_of(scope.assessment().marks, [](const auto &mark) { return mark.low.has_value(); });
}

bool any_pit_lowered(const Scope &scope) {
  return std::ranges::any_of(scope.assessment().pits, [](const auto &pit) { return pit.low.has_value(); });
}

} // namespace strakebook::compose
