#include "strakebook/compose/crossing.h"

#include <algorithm>

#include "strakebook/compose/map_parts.h"

namespace strakebook::compose {

using content::operator+;

namespace {

void add_once(std::vector<std::string> &to, const std::string &one) {
  if (std::ranges::find(to, one) == to.end()) to.push_back(one);
}

/// What some words point at.
void add_pointers(std::vector<std::string> &to, const Scope &scope, std::string_view text) {
  for (const auto &piece : survey::pieces(scope.survey(), text))
    if (const auto *pointer = std::get_if<survey::Pointer>(&piece)) add_once(to, target_id(*pointer));
}

/// The photographs of everything that has some, by block id.
std::map<std::string, std::vector<std::string>> photos_of_subjects(const Scope &scope) {
  std::map<std::string, std::vector<std::string>> out;
  for (const auto &[mark, photos] : photos_at_marks(scope)) out[mark_id(mark)] = photos;
  for (const auto &pit : scope.survey().pits) out[pit_id(pit.id)] = pit.photos;
  for (const auto &doubler : scope.survey().doublers) out[doubler_id(doubler.id)] = doubler.photos;
  for (const auto &note : scope.survey().notes) out[note_id(note.id)] = note.photos;
  return out;
}

std::vector<std::string> subjects_of(const Scope &scope, const survey::Recommendation &item) {
  std::vector<std::string> cited;
  for (const auto *words : {&item.title, &item.deadline, &item.reason, &item.alternative, &item.feasible, &item.hazards, &item.binds, &item.proof, &item.status})
    add_pointers(cited, scope, words->text);
  for (const auto &one : item.evidence) add_pointers(cited, scope, one);
  const auto photos = photos_of_subjects(scope);
  const std::size_t named = cited.size();
  for (std::size_t i = 0; i < named; ++i)
    if (const auto found = photos.find(cited[i]); found != photos.end())
      for (const auto &photo : found->second) add_once(cited, photo_id(photo));
  return cited;
}

void add_way(Inlines &to, const Scope &scope, std::string target, std::string shown) {
  if (!to.empty()) to = std::move(to) + content::soft(scope.say("voice.list-between"));
  to.push_back(content::Reference{std::move(target), content::Reference::Form::text_page, std::move(shown), content::Emphasis::soft});
}

bool has(const std::vector<std::string> &all, const std::string &one) { return std::ranges::find(all, one) != all.end(); }

/// The rows of the tables that show what a photograph shows.
void add_subjects(Inlines &to, const Scope &scope, const survey::Photo &photo) {
  const std::string mark = photo.at.row + " " + photo.at.station.raw;
  if (std::ranges::any_of(scope.survey().marks, [&](const survey::Mark &one) { return one.row == photo.at.row && one.id() == mark; }))
    add_way(to, scope, mark_id(mark), tied_mark(mark));
  for (const auto &pit : scope.survey().pits)
    if (has(pit.photos, photo.id)) add_way(to, scope, pit_id(pit.id), pit.id);
  for (const auto &doubler : scope.survey().doublers)
    if (has(doubler.photos, photo.id)) add_way(to, scope, doubler_id(doubler.id), doubler.id);
  for (const auto &note : scope.survey().notes)
    if (has(note.photos, photo.id)) add_way(to, scope, note_id(note.id), note.id);
}

} // namespace

ItemsAt items_by_subject(const Scope &scope) {
  ItemsAt out;
  for (const auto &item : scope.survey().recommendations)
    for (const auto &subject : subjects_of(scope, item)) out[subject].push_back(item.id);
  return out;
}

const std::vector<std::string> &items_at(const ItemsAt &items, std::string_view id) {
  static const std::vector<std::string> none;
  const auto found = items.find(id);
  return found == items.end() ? none : found->second;
}

bool any_item_at(const ItemsAt &items, std::string_view kind) {
  return std::ranges::any_of(items, [&](const auto &one) { return one.first.starts_with(kind); });
}

Inlines item_links(const Scope &scope, const std::vector<std::string> &items) {
  Inlines out;
  for (const auto &item : items) {
    if (!out.empty()) out = std::move(out) + content::plain(scope.say("voice.list-between"));
    out = std::move(out) + link(item_id(item), item);
  }
  return out;
}

PhotosAt photos_at_marks(const Scope &scope) {
  PhotosAt out;
  for (const auto &photo : scope.survey().photos) out[photo.at.row + " " + photo.at.station.raw].push_back(photo.id);
  return out;
}

MapPlaces::MapPlaces(const Scope &scope) : scope_(scope), cells_(needs_bays(scope)) {}

std::string MapPlaces::of(const survey::Mark &mark) const {
  return cells_ ? map_bay_id(mark.row, bay_of(scope_, mark.station)) : map_id(mark_id(mark.id()));
}

std::string MapPlaces::of(const survey::Photo &photo) const { return cells_ ? "figure/map" : map_id(photo_id(photo.id)); }

Inlines photos_of_item(const Scope &scope, const std::string &item) {
  Inlines out;
  const ItemsAt items = items_by_subject(scope);
  for (const auto &photo : scope.survey().photos)
    if (has(items_at(items, photo_id(photo.id)), item)) add_way(out, scope, photo_id(photo.id), photo.id);
  return out;
}

Inlines steelwork_of_item(const Scope &scope, const std::string &item) {
  Inlines out;
  for (const auto &one : scope.survey().steelwork)
    if (one.recommendation == item) add_way(out, scope, steelwork_id(one.id), one.id);
  return out;
}

Inlines ways_from_photo(const Scope &scope, const survey::Photo &photo, const ItemsAt &items) {
  Inlines out;
  add_subjects(out, scope, photo);
  add_way(out, scope, MapPlaces(scope).of(photo), scope.say("photographs.map"));
  for (const auto &item : items_at(items, photo_id(photo.id))) add_way(out, scope, item_id(item), scope.say("voice.item", {{"n", item}}));
  return out;
}

} // namespace strakebook::compose
