#include "strakebook/compose/chapters.h"
#include "strakebook/compose/hull.h"
#include "strakebook/compose/looks.h"

/// Photographs keyed to station, side and direction: the picture, or a frame that says what would be there.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

content::Block photo_block(const Scope &scope, const survey::Photo &photo) {
  content::Photo out;
  const auto image = scope.source.photos.find(photo.id);
  const std::string place = tied(photo.at.row, photo.at.station.raw), where = row_words(scope, photo.at.row);
  const base::Fill at{"place", place}, row{"row", where}, looking{"looking", photo.looking.text};
  if (image != scope.source.photos.end()) {
    out.image = image->second;
  } else {
    out.placeholder = content::strong(scope.say("photographs.none")) + Inlines{content::LineBreak{}} +
                      plain(scope.say("photographs.placeholder", {at, row, looking}));
  }
  out.number = photo.id;
  out.caption = content::strong(place) + content::soft(scope.say("photographs.where", {row, looking})) + Inlines{content::LineBreak{}} +
                prose(scope, photo.caption.text);
  out.strip = locator_strip(scope, photo);
  return block(std::move(out), photo_id(photo.id), photo.span);
}

} // namespace

content::Section photographs(const Scope &scope) {
  auto out = section_of(scope);
  const auto &photos = scope.survey().photos;
  if (photos.empty()) {
    out.blocks.push_back(paragraph(plain(scope.say("photographs.no-photos")), look::text));
    return out;
  }
  std::vector<content::Block> shown = {paragraph(plain(scope.say("photographs.intro")), look::lead)};
  for (std::size_t i = 0; i < photos.size(); i += 2) {
    content::Columns pair{.lattice = "halves", .cells = {{photo_block(scope, photos[i])}, {}}};
    if (i + 1 < photos.size()) pair.cells[1] = {photo_block(scope, photos[i + 1])};
    shown.push_back(block(std::move(pair)));
    // The heading and what leads in stay with the first pictures.
    if (i == 0) {
      shown.insert(shown.begin(), std::move(out.blocks.back()));
      out.blocks.back() = block(content::Together{std::move(shown)});
      shown.clear();
    }
  }
  append(out.blocks, std::move(shown));
  return out;
}

} // namespace strakebook::compose
