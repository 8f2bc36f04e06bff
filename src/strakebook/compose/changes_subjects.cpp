#include <algorithm>
#include <array>
#include <utility>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/subjects.h"

/// Things that changed, by the names that reasons call them by.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// "decision W" is a decision, and its id is W; "vessel" is a group of the survey file alone.
struct Named {
  std::string_view word, id;
};

Named named(std::string_view subject) {
  const auto blank = subject.find(' ');
  return blank == subject.npos ? Named{subject, {}} : Named{subject.substr(0, blank), subject.substr(blank + 1)};
}

template <class T> bool has(const std::vector<T> &all, std::string_view id) {
  return std::ranges::any_of(all, [&](const T &one) { return one.id == id; });
}

std::string id_of_steel(const survey::Survey &survey, const std::string &subject) {
  if (survey::mark_of(survey, subject) != nullptr)
    return mark_id(subject);
  if (has(survey.pits, subject))
    return pit_id(subject);
  if (has(survey.doublers, subject))
    return doubler_id(subject);
  return has(survey.notes, subject) ? note_id(subject) : std::string();
}

std::string place_of_named(const Scope &scope, const Named &name) {
  const auto &survey = scope.survey();
  const bool zone = survey::zone_of(survey, name.id) != nullptr;
  if (name.word == "decision")
    return zone ? zone_id(name.id) : std::string();
  if (name.word == "zone")
    return zone ? original_id(name.id) : std::string();
  if (name.word == "item")
    return has(survey.recommendations, name.id) ? item_id(name.id) : std::string();
  if (name.word == "schedule")
    return has(survey.steelwork, name.id) ? steelwork_id(name.id) : std::string();
  if (name.word == "limitation")
    return has(survey.limitations, name.id) ? limitation_id(name.id) : std::string();
  if (name.word == "photo")
    return has(survey.photos, name.id) ? photo_id(name.id) : std::string();
  if (name.word == "criterion")
    return criterion(scope, name.id) != nullptr ? criterion_id(name.id) : std::string();
  return {};
}

/// Chapters that print a group of the survey file, or every thing of one kind.
constexpr std::array<std::pair<std::string_view, std::string_view>, 21> chapters_of_groups{
    {{"answer", "answer"},         {"report", "identity"},     {"instructed", "scope"},        {"vessel", "vessel"},
     {"conditions", "conditions"}, {"gauge", "instruments"},   {"gauges", "instruments"},      {"datum", "datum"},
     {"criteria", "criteria"},     {"row", "results"},         {"rows", "results"},            {"readings", "results"},
     {"none-found", "results"},    {"earlier", "comparison"},  {"previous-survey", "comparison"}, {"coating", "coating"},
     {"afloat", "steelwork"},      {"surveyor", "basis"},      {"acknowledged", "appendices"},  {"house", "appendices"},
     {"carried", "recommendations"}}};

std::string place_of_group(const Scope &scope, std::string_view word) {
  const auto found = std::ranges::find(chapters_of_groups, word, [](const auto &one) { return one.first; });
  const auto &sections = scope.wording().sections;
  const bool there = found != chapters_of_groups.end() && std::ranges::find(sections, found->second, &house::SectionPlan::id) != sections.end();
  return there ? section_id(found->second) : std::string();
}

/// What a reader calls it by beside its id.
std::string place_words(const Scope &scope, const std::string &subject) {
  const auto name = named(subject);
  if (const auto *mark = survey::mark_of(scope.survey(), subject))
    return row_words(scope, mark->row);
  if (const auto *pit = survey::pit_of(scope.survey(), subject))
    return tied_mark(pit->at.row + " " + pit->at.station.raw);
  if (name.word == "decision" || name.word == "zone")
    return survey::zone_of(scope.survey(), name.id) == nullptr ? std::string() : zone_name(scope, name.id);
  if (name.word == "row")
    return survey::row_of(scope.survey(), name.id) == nullptr ? std::string() : row_words(scope, name.id);
  if (name.word != "item")
    return {};
  const auto &items = scope.survey().recommendations;
  const auto found = std::ranges::find(items, name.id, &survey::Recommendation::id);
  return found == items.end() ? std::string() : reach_words(scope, found->at);
}

} // namespace

std::string place_of_change(const Scope &scope, const std::string &subject) {
  if (auto steel = id_of_steel(scope.survey(), subject); !steel.empty())
    return steel;
  const auto name = named(subject);
  if (auto one = place_of_named(scope, name); !one.empty())
    return one;
  return place_of_group(scope, name.word);
}

Inlines subject_words(const Scope &scope, const amend::Change &change) {
  const Inlines name = content::strong(untorn(capitalised(change.subject)));
  const std::string where = place_words(scope, change.subject);
  return where.empty() ? name : name + plain(scope.say("voice.list-between")) + content::soft(where);
}

Inlines reason_words(const Scope &scope, const amend::Change &change) { return answer_to(scope, change.why); }

content::Cell page_cell(const Scope &scope, const std::string &subject) {
  const std::string place = place_of_change(scope, subject);
  return place.empty() ? cell(std::string()) : cell(page_link(place));
}

bool is_measured(amend::Kind kind) { return kind == amend::Kind::reading || kind == amend::Kind::pit; }

} // namespace strakebook::compose
