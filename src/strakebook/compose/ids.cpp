#include "strakebook/compose/ids.h"

namespace strakebook::compose {

namespace {

std::string under(std::string_view kind, std::string_view id) {
  return std::string(kind) + "/" + std::string(id);
}

} // namespace

std::string mark_id(std::string_view mark) { return under("mark", mark); }
std::string pit_id(std::string_view pit) { return under("pit", pit); }
std::string doubler_id(std::string_view doubler) { return under("doubler", doubler); }
std::string note_id(std::string_view note) { return under("note", note); }
std::string photo_id(std::string_view photo) { return under("photo", photo); }
std::string item_id(std::string_view recommendation) { return under("item", recommendation); }
std::string steelwork_id(std::string_view item) { return under("steelwork", item); }
std::string limitation_id(std::string_view limitation) { return under("limitation", limitation); }
std::string zone_id(std::string_view zone) { return under("zone", zone); }
std::string section_id(std::string_view section) { return under("section", section); }
std::string criterion_id(std::string_view criterion) { return under("criterion", criterion); }
std::string original_id(std::string_view zone) { return under("original", zone); }
std::string map_id(std::string_view id) { return under("map", id); }
std::string map_bay_id(std::string_view row, int bay) {
  return under("map/bay", std::string(row) + " " + std::to_string(bay + 1));
}

std::string target_id(const survey::Pointer &pointer) {
  switch (pointer.target) {
  case survey::Target::mark:
    return mark_id(pointer.id);
  case survey::Target::pit:
    return pit_id(pointer.id);
  case survey::Target::doubler:
    return doubler_id(pointer.id);
  case survey::Target::note:
    return note_id(pointer.id);
  case survey::Target::photo:
    return photo_id(pointer.id);
  case survey::Target::recommendation:
    return item_id(pointer.id);
  case survey::Target::steelwork:
    return steelwork_id(pointer.id);
  case survey::Target::limitation:
    return limitation_id(pointer.id);
  case survey::Target::zone:
    return zone_id(pointer.id);
  }
  return {};
}

} // namespace strakebook::compose
