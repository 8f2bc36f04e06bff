#include "strakebook/steel/survey/references.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/prose.h"

namespace strakebook::survey {

namespace {

template <class Map> std::vector<std::string> keys_of(const Map &map) {
  std::vector<std::string> keys;
  for (const auto &entry : map)
    keys.push_back(entry.first);
  return keys;
}
template <class T> std::vector<std::string> ids_of(const std::vector<T> &all) {
  std::vector<std::string> ids;
  for (const auto &one : all)
    ids.push_back(one.id);
  return ids;
}

std::vector<std::string> criteria_known(const Survey &survey, const policy::Policy &policy) {
  auto known = policy.criteria_order.empty() ? keys_of(policy.criteria) : policy.criteria_order;
  for (const auto &own : survey.own_criteria)
    known.push_back(own.id);
  return known;
}

/// One vocabulary as it stands in this survey: its names, and what one of them is called.
struct Names {
  std::vector<std::string> known;
  std::string_view what;
  bool house; ///< the house's words; else the survey's own
};
Names names_of(Vocabulary kind, const Survey &survey, const policy::Policy &policy) {
  switch (kind) {
  case Vocabulary::action:
    return {keys_of(policy.actions), "an action of this house", true};
  case Vocabulary::basis:
    return {keys_of(policy.bases), "a basis of this house", true};
  case Vocabulary::tolerance:
    return {keys_of(policy.tolerances), "a tolerance of this house", true};
  case Vocabulary::water:
    return {keys_of(policy.afloat.waters), "a water of this house", true};
  case Vocabulary::metal:
    return {keys_of(policy.protection.metals), "a metal for anodes of this house", true};
  case Vocabulary::criterion:
    return {criteria_known(survey, policy), "a criterion of this house or of this survey", true};
  case Vocabulary::zone:
    return {ids_of(survey.zones), "zone", false};
  case Vocabulary::row:
    return {ids_of(survey.rows), "row", false};
  case Vocabulary::gauge:
    return {ids_of(survey.gauges), "gauge", false};
  case Vocabulary::photo:
    return {ids_of(survey.photos), "photo", false};
  case Vocabulary::recommendation:
    return {ids_of(survey.recommendations), "recommendation", false};
  case Vocabulary::limitation:
    return {ids_of(survey.limitations), "limitation", false};
  case Vocabulary::evidence:
    return {{}, "mark, pit, photo, note or item", false};
  case Vocabulary::mark_or_pit:
    return {{}, "mark or pit", false};
  case Vocabulary::new_criterion:
    return {};
  }
  return {};
}

/// "PW 9", "P3", "photo 4": a text that is one pointer and nothing else.
bool points(const Survey &survey, const Reference &reference) {
  const auto found = pieces(survey, reference.name);
  if (found.size() != 1)
    return false;
  const auto *pointer = std::get_if<Pointer>(&found.front());
  if (!pointer)
    return false;
  return reference.kind == Vocabulary::evidence || pointer->target == Target::mark ||
         pointer->target == Target::pit;
}

bool same_place(const base::SourceSpan &a, const base::SourceSpan &b) {
  return a.file == b.file && a.line == b.line && a.column == b.column;
}

/// Zones and rows are required: without any, that is what was reported, and not each mention of one.
bool reported_as_missing(Vocabulary kind, const Names &names) {
  return names.known.empty() && (kind == Vocabulary::zone || kind == Vocabulary::row);
}

void check_pointer(Reading &reading, const Reference &reference, const Names &names) {
  if (points(reading.survey, reference) || !reading.marks_complete)
    return;
  reading.error(base::Code::dangling_reference, reference.span,
                fmt::format("\"{}\" is no {} of this survey", reference.name, names.what),
                "one thing that is in the survey: PW 9, P3, photo 4, N1");
}

/// A survey may add a criterion, not put another in the place of the house's.
void check_new_criterion(Reading &reading, const Reference &reference, const policy::Policy &policy) {
  if (policy.criteria.contains(reference.name))
    reading.error(base::Code::layout_loosens, reference.span,
                  fmt::format("own criterion {} has the name of one of the house's", reference.name),
                  "a name of its own");
}

void check_name(Reading &reading, const Reference &reference, const Names &names) {
  const auto &known = names.known;
  if (reported_as_missing(reference.kind, names) ||
      std::find(known.begin(), known.end(), reference.name) != known.end())
    return;
  if (names.house)
    return reading.unknown_word(reference.span, reference.name, names.what, known);
  const auto near = reference.name.size() > 1 ? base::nearest(reference.name, known)
                                              : std::nullopt; // one letter is near to any
  reading.error(base::Code::dangling_reference, reference.span,
                fmt::format("there is no {} {}", names.what, reference.name),
                known.empty() ? "none is in the survey"
                              : fmt::format("one of: {}", base::joined(known, ", ")),
                near ? *near : std::string{});
}

} // namespace

void resolve(Reading &reading, const policy::Policy &policy) {
  std::map<Vocabulary, Names> names;
  const Reference *last =
      nullptr; // one place is reported once, though a row is named by each of its readings
  for (const auto &reference : reading.references) {
    const bool again = last && last->kind == reference.kind && same_place(last->span, reference.span) &&
                       last->name == reference.name;
    last = &reference;
    if (again)
      continue;
    auto found = names.find(reference.kind);
    if (found == names.end())
      found = names.emplace(reference.kind, names_of(reference.kind, reading.survey, policy)).first;
    switch (reference.kind) {
    case Vocabulary::evidence:
    case Vocabulary::mark_or_pit:
      check_pointer(reading, reference, found->second);
      break;
    case Vocabulary::new_criterion:
      check_new_criterion(reading, reference, policy);
      break;
    default:
      check_name(reading, reference, found->second);
    }
  }
}

} // namespace strakebook::survey
