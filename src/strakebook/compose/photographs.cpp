#include "strakebook/compose/chapters.h"
#include "strakebook/compose/crossing.h"
#include "strakebook/compose/hull.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"
#include "strakebook/compose/photograph_register.h"
#include "strakebook/house/photo_frame.h"

/// Photographs keyed to station, side and direction: the picture, or a frame that says what would be there.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

const base::PrintedPicture *picture_of(const Scope &scope, const survey::Photo &photo) {
  const auto found = scope.source.photos.find(photo.id);
  return found == scope.source.photos.end() ? nullptr : &found->second;
}

bool is_wide(const Scope &scope, const survey::Photo &photo) {
  const auto *picture = picture_of(scope, photo);
  return picture && house::photo_frame(scope.source.house.style, look::halves, picture->given_width, picture->given_height).wide;
}

/// "port wind-and-water, square on"; without the way the camera looked where the survey does not say.
std::string where_words(const Scope &scope, const survey::Photo &photo) {
  const std::string row = row_words(scope, photo.at.row);
  if (!photo.looking.given()) return row;
  return scope.say("photographs.where", {{"row", row}, {"looking", photo.looking.text}});
}

Inlines placeholder(const Scope &scope, const survey::Photo &photo, const std::string &place) {
  return missing_words(scope, photo) + Inlines{content::LineBreak{}} +
         content::soft(scope.say("photographs.placeholder", {{"place", place}, {"where", where_words(scope, photo)}}));
}

content::Block photo_block(const Scope &scope, const survey::Photo &photo, const ItemsAt &items) {
  content::Photo out;
  const std::string place = tied(photo.at.row, photo.at.station.raw);
  if (const auto *picture = picture_of(scope, photo)) out.image = picture->shown;
  else out.placeholder = placeholder(scope, photo, place);
  out.number = photo.id;
  out.caption = scope.tell("photographs.head", {{"place", content::strong(place)}, {"where", content::soft(where_words(scope, photo))}});
  out.caption.emplace_back(content::LineBreak{});
  if (photo.caption.given()) out.caption = out.caption + prose(scope, photo.caption.text) + plain("\u00A0 ");
  out.caption = out.caption + ways_from_photo(scope, photo, items);
  out.strip = locator_strip(scope, photo);
  return block(std::move(out), photo_id(photo.id), photo.span);
}

/// Two abreast in their order; a wide one has the width of the page to itself.
std::vector<content::Block> rows_of_photos(const Scope &scope) {
  const ItemsAt items = items_by_subject(scope);
  const auto &photos = scope.survey().photos;
  std::vector<content::Block> rows;
  for (std::size_t i = 0; i < photos.size(); ++i) {
    if (is_wide(scope, photos[i])) {
      rows.push_back(photo_block(scope, photos[i], items));
      continue;
    }
    content::Columns pair{.lattice = look::halves, .cells = {{photo_block(scope, photos[i], items)}, {}}};
    if (i + 1 < photos.size() && !is_wide(scope, photos[i + 1])) pair.cells[1] = {photo_block(scope, photos[++i], items)};
    rows.push_back(block(std::move(pair)));
  }
  return rows;
}

} // namespace

content::Section photographs(const Scope &scope) {
  auto out = section_of(scope);
  auto rows = rows_of_photos(scope);
  if (rows.empty()) {
    out.blocks.push_back(paragraph(plain(scope.say("photographs.no-photos")), look::text));
    return out;
  }
  // The heading and what leads in stay with the first pictures.
  std::vector<content::Block> first = {std::move(out.blocks.back()), paragraph(plain(scope.say("photographs.intro")), look::lead),
                                       std::move(rows.front())};
  out.blocks.back() = block(content::Together{std::move(first)});
  rows.erase(rows.begin());
  append(out.blocks, std::move(rows));
  out.blocks.push_back(photograph_register(scope));
  return out;
}

} // namespace strakebook::compose
