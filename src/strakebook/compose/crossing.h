#pragma once

#include <map>
#include <string>
#include <vector>

#include "strakebook/compose/voice.h"

/// Ways between the row of a mark or pit in the tables, its place on the map, its photographs and the recommendations that
/// rest on it: each leads to the others.
namespace strakebook::compose {

/// Block id of what is cited -> recommendations, in their order. A recommendation rests on what its words and its evidence
/// point at, and on the photographs of those marks, pits, doublers and notes.
using ItemsAt = std::map<std::string, std::vector<std::string>, std::less<>>;
ItemsAt items_by_subject(const Scope &scope);
/// The recommendations that rest on a subject; none if nothing cites it.
const std::vector<std::string> &items_at(const ItemsAt &items, std::string_view id);
bool any_item_at(const ItemsAt &items, std::string_view kind); ///< whether anything of this kind ("mark/") is cited
/// Their numbers, each a link.
Inlines item_links(const Scope &scope, const std::vector<std::string> &items);

/// "PW 9" -> numbers of the photographs taken there.
using PhotosAt = std::map<std::string, std::vector<std::string>, std::less<>>;
PhotosAt photos_at_marks(const Scope &scope);

/// Where marks and photographs stand on the map. A large boat's map has cells: there a mark leads to its cell, and a
/// photograph to the map as a whole.
class MapPlaces {
public:
  explicit MapPlaces(const Scope &scope);
  std::string of(const survey::Mark &mark) const;
  std::string of(const survey::Photo &photo) const;

private:
  const Scope &scope_;
  bool cells_;
};

/// Photographs and items of steelwork that belong to a recommendation, as links with their pages; empty: none.
Inlines photos_of_item(const Scope &scope, const std::string &item);
Inlines steelwork_of_item(const Scope &scope, const std::string &item);

/// From a photograph back to what it shows: rows of the tables, the map, recommendations.
Inlines ways_from_photo(const Scope &scope, const survey::Photo &photo, const ItemsAt &items);

} // namespace strakebook::compose
