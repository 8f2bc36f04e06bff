#include "strakebook/steel/amend/json.h"

#include <nlohmann/json.hpp>

#include "strakebook/base/exact_text.h"
#include "strakebook/steel/amend/words.h"
#include "strakebook/steel/assess/words.h"

namespace strakebook::amend {

namespace {

using Json = nlohmann::ordered_json;

Json form(const std::optional<base::Length> &length) { return length ? Json(base::exact::text(*length)) : Json(nullptr); }
Json form(const survey::Words &words) { return words.given() ? Json(words.text) : Json(nullptr); }
Json form(const Difference &one) { return {{"field", one.field}, {"before", one.before}, {"after", one.after}}; }

// Declared before the list that calls them: a template finds in this namespace only what stands above it.
Json form(const Change &change);
Json form(const Moved &moved);
Json form(const Stands &stands);

template <class Items> Json list(const Items &items) {
  Json all = Json::array();
  for (const auto &item : items) all.push_back(form(item));
  return all;
}

Json form(const Change &change) {
  return {{"kind", word_of(change.kind)},
          {"how", word_of(change.how)},
          {"subject", change.subject},
          {"differences", list(change.differences)},
          {"remaining_before", form(change.remaining_before)},
          {"remaining_after", form(change.remaining_after)},
          {"why", form(change.why)}};
}

Json form(const Moved &moved) {
  return {{"zone", moved.zone},
          {"criterion", moved.criterion},
          {"subject", moved.subject.empty() ? Json(nullptr) : Json(moved.subject)},
          {"before", assess::word_of(moved.before)},
          {"after", assess::word_of(moved.after)}};
}

Json form(const Stands &stands) { return {{"zone", stands.zone}, {"why", form(stands.why)}}; }

} // namespace

Json json(const Changes &changes) {
  return {{"changes", list(changes.all)},
          {"moved", list(changes.moved)},
          {"stands", list(changes.stands)},
          {"decision_changed", changes.decision_changed()}};
}

} // namespace strakebook::amend
