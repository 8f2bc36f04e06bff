#include "strakebook/compose/voice.h"

namespace strakebook::compose {

namespace {

std::string stretch(const Scope &scope, const survey::Reach &reach) {
  if (reach.from && reach.to) {
    if (reach.from->value == reach.to->value)
      return reach.from->raw;
    return scope.say("place.from-to", {{"from", reach.from->raw}, {"to", reach.to->raw}});
  }
  if (reach.from)
    return scope.say("place.from", {{"from", reach.from->raw}});
  if (reach.to)
    return scope.say("place.to", {{"to", reach.to->raw}});
  return {};
}

} // namespace

std::string tied_mark(std::string_view mark) {
  return untorn(mark);
}

std::string row_words(const Scope &scope, std::string_view row) {
  const auto *found = survey::row_of(scope.survey(), row);
  if (found == nullptr)
    return std::string(row);
  if (found->side == survey::Side::centre)
    return found->name.text;
  return scope.say("place.row", {{"side", side_word(scope, found->side)}, {"row", found->name.text}});
}

std::string mark_place(const Scope &scope, std::string_view mark) {
  const auto *found = survey::mark_of(scope.survey(), mark);
  if (found == nullptr)
    return std::string(mark);
  return scope.say("place.mark",
                   {{"mark", tied(found->row, found->station.raw)}, {"where", row_words(scope, found->row)}});
}

std::string pit_place(const Scope &scope, const survey::Pit &pit) {
  return scope.say("place.pit", {{"pit", pit.id},
                                 {"mark", tied(pit.at.row, pit.at.station.raw)},
                                 {"where", row_words(scope, pit.at.row)}});
}

std::string zone_name(const Scope &scope, std::string_view zone) {
  const auto *found = survey::zone_of(scope.survey(), zone);
  return found == nullptr ? std::string(zone) : found->name.text;
}

std::string reach_words(const Scope &scope, const survey::Reach &reach) {
  std::string who = join_and(scope, reach.rows);
  if (who.empty() && !reach.zone.empty())
    who = zone_name(scope, reach.zone);
  const std::string where = stretch(scope, reach);
  if (who.empty() && where.empty())
    return scope.say("place.whole-hull");
  if (who.empty())
    return where;
  if (where.empty())
    return who;
  return tied(who, where);
}

bool is_pit(const Scope &scope, std::string_view subject) {
  return survey::pit_of(scope.survey(), subject) != nullptr;
}

std::string subject_target(const Scope &scope, std::string_view subject) {
  return is_pit(scope, subject) ? pit_id(subject) : mark_id(subject);
}

} // namespace strakebook::compose
