#include "strakebook/steel/amend/things.h"

#include <algorithm>
#include <array>

#include "strakebook/steel/amend/named_files.h"
#include "strakebook/steel/survey/written.h"

namespace strakebook::amend {

using survey::WrittenField;
using survey::WrittenThing;

namespace {

struct Naming {
  std::string_view key;
  Kind kind;
  std::string_view before_id; ///< "decision" of "decision W"; empty: the id alone names it
};
/// A key that is not listed is a text, and is named as it is written.
constexpr std::array namings{Naming{"decisions", Kind::decision, "decision"},
                             Naming{"recommendations", Kind::recommendation, "item"},
                             Naming{"carried", Kind::recommendation, "carried"},
                             Naming{"answer", Kind::answer, ""},
                             Naming{"steelwork", Kind::steelwork, "schedule"},
                             Naming{"criteria", Kind::criterion, "criterion"},
                             Naming{"own-criteria", Kind::criterion, "criterion"},
                             Naming{"zones", Kind::text, "zone"},
                             Naming{"rows", Kind::text, "row"},
                             Naming{"pits", Kind::pit, ""},
                             Naming{"doublers", Kind::doubler, ""},
                             Naming{"notes", Kind::text, ""},
                             Naming{"limitations", Kind::limitation, "limitation"},
                             Naming{"photos", Kind::photograph, "photo"},
                             Naming{"gauges", Kind::instrument, "gauge"},
                             Naming{"earlier-surveys", Kind::text, "earlier"},
                             Naming{"house", Kind::house, ""}};

/// What every issue has of its own, and what is said of the change itself. "report issued": that field only.
constexpr std::array<std::string_view, 10> not_compared{"recipients",    "amendment",    "addenda",       "issue-record",      "private",
                                                        "report issue",  "report issued", "report state", "report supersedes", "surveyor signed-on"};
constexpr std::array<std::string_view, 5> of_the_original{"original", "basis", "source", "tolerance", "assumption"};

/// The name that a reason gives a thing of the survey file, and what kind of change it is.
struct Called {
  Kind kind = Kind::text;
  std::string subject; ///< "P3", "decision W", "vessel"
};
Called called(const WrittenThing &thing) {
  const auto found = std::ranges::find(namings, thing.key, &Naming::key);
  const auto &before_id = found == namings.end() || thing.id.empty() ? std::string_view(thing.key) : found->before_id;
  std::string subject(before_id);
  if (!thing.id.empty()) subject += (subject.empty() ? "" : " ") + thing.id;
  return {found == namings.end() ? Kind::text : found->kind, std::move(subject)};
}

bool among(const auto &list, std::string_view name) { return std::ranges::find(list, name) != list.end(); }

const WrittenField *field_of(const WrittenThing &thing, std::string_view name) {
  const auto found = std::ranges::find(thing.fields, name, &WrittenField::name);
  return found == thing.fields.end() ? nullptr : &*found;
}

/// A criterion can stand under two keys, the use of it and the whole of it; that is one thing.
void join(WrittenThing &into, const WrittenThing &more) {
  for (const auto &field : more.fields) {
    const auto same = std::ranges::find(into.fields, field.name, &WrittenField::name);
    if (same == into.fields.end()) into.fields.push_back(field);
    else same->parts.insert(same->parts.end(), field.parts.begin(), field.parts.end());
  }
}

struct Thing {
  Called name;
  WrittenThing written;
};
using Things = std::vector<Thing>;

Thing *same_subject(Things &things, const Thing &thing) {
  const auto found = std::ranges::find_if(things, [&](const Thing &one) { return one.name.subject == thing.name.subject; });
  return found == things.end() ? nullptr : &*found;
}

Things compared_things(const Edition &edition) {
  Things kept;
  for (auto &thing : survey::things_written(edition.survey)) {
    if (among(not_compared, thing.key)) continue;
    std::erase_if(thing.fields, [&](const WrittenField &field) { return among(not_compared, thing.key + " " + field.name); });
    if (thing.fields.empty()) continue;
    add_from_files(thing, edition);
    Thing named{called(thing), std::move(thing)};
    if (auto *same = same_subject(kept, named)) join(same->written, named.written);
    else kept.push_back(std::move(named));
  }
  return kept;
}

std::string text_of(const std::vector<std::string> &parts, bool apart) { return survey::text_of(WrittenField{.name = {}, .parts = parts, .apart = apart, .span = {}}); }

/// Of texts that stand for themselves only those that differ are shown, in pairs as they come.
void add_parts_apart(std::vector<Difference> &found, const std::string &name, std::vector<std::string> before, std::vector<std::string> after) {
  const auto was = before, is = after;
  for (const auto &part : was)
    if (const auto same = std::ranges::find(after, part); same != after.end()) {
      after.erase(same);
      before.erase(std::ranges::find(before, part));
    }
  if (before.empty() && after.empty()) { // the same texts in another order
    found.push_back({name, text_of(was, true), text_of(is, true)});
    return;
  }
  for (std::size_t i = 0; i < std::max(before.size(), after.size()); ++i)
    found.push_back({name, i < before.size() ? before[i] : "", i < after.size() ? after[i] : ""});
}

void add_field(std::vector<Difference> &found, const WrittenField *before, const WrittenField *after) {
  const std::vector<std::string> was = before ? before->parts : std::vector<std::string>{}, is = after ? after->parts : std::vector<std::string>{};
  const auto &any = after ? *after : *before;
  if (was == is) return;
  if (any.apart) add_parts_apart(found, any.name, was, is);
  else found.push_back({any.name, text_of(was, false), text_of(is, false)});
}

/// What stands in two states of one thing, field by field.
std::vector<Difference> differences(const WrittenThing &before, const WrittenThing &after) {
  std::vector<Difference> found;
  for (const auto &field : after.fields) add_field(found, field_of(before, field.name), &field);
  for (const auto &field : before.fields)
    if (!field_of(after, field.name)) add_field(found, &field, nullptr);
  return found;
}

/// Where the first field that differs stands, else the thing, else any of its fields.
base::SourceSpan place_of(const WrittenThing &thing, const std::vector<Difference> &found) {
  for (const auto &difference : found)
    if (const auto *field = field_of(thing, difference.field); field && field->span.line > 0) return field->span;
  if (thing.span.line > 0) return thing.span;
  const auto placed = std::ranges::find_if(thing.fields, [](const WrittenField &field) { return field.span.line > 0; });
  return placed == thing.fields.end() ? base::SourceSpan{} : placed->span;
}

Kind kind_of(const Called &name, const WrittenThing &thing, const std::vector<Difference> &found) {
  const bool original = thing.key == "zones" && std::ranges::any_of(found, [](const Difference &one) { return among(of_the_original, one.field); });
  return original ? Kind::original : name.kind;
}

std::optional<base::Length> remaining_of(const Edition &edition, const Thing *thing) {
  const auto *pit = thing && thing->name.kind == Kind::pit ? survey::pit_of(edition.survey, thing->written.id) : nullptr;
  return pit ? std::optional(pit->adjacent.value - pit->depth.value) : std::nullopt;
}

Change change_of(How how, const Thing &thing, std::vector<Difference> found) {
  Change change{.kind = kind_of(thing.name, thing.written, found), .how = how, .subject = thing.name.subject, .span = place_of(thing.written, found)};
  change.differences = std::move(found);
  return change;
}

} // namespace

std::vector<Change> changed_things(const Edition &before, const Edition &after) {
  Things was = compared_things(before), is = compared_things(after);
  std::vector<Change> changes;
  for (const auto &thing : is) {
    const auto *old = same_subject(was, thing);
    auto found = differences(old ? old->written : WrittenThing{}, thing.written);
    if (found.empty()) continue;
    auto &change = changes.emplace_back(change_of(old ? How::changed : How::added, thing, std::move(found)));
    change.remaining_before = remaining_of(before, old);
    change.remaining_after = remaining_of(after, &thing);
  }
  for (const auto &thing : was) {
    if (same_subject(is, thing)) continue;
    auto &change = changes.emplace_back(change_of(How::withdrawn, thing, differences(thing.written, {})));
    change.span = after.survey.span; // it stands nowhere today
    change.remaining_before = remaining_of(before, &thing);
  }
  return changes;
}

} // namespace strakebook::amend
