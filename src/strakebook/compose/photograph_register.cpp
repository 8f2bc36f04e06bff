#include "strakebook/compose/photograph_register.h"

#include <algorithm>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"
#include "strakebook/compose/tables.h"

/// The register of photographs: which file each is, to the bit, and what became of it on the page.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string pixels(const Scope &scope, int width, int height) {
  return untorn(scope.say("photographs.pixels", {{"width", std::to_string(width)}, {"height", std::to_string(height)}}));
}

Inlines two_lines(Inlines first, Inlines second) { return std::move(first) + Inlines{content::LineBreak{}} + std::move(second); }

/// The file and its size, or why there is none; under it the surveyor's caption.
Inlines shown_words(const Scope &scope, const survey::Photo &photo) {
  const auto &inputs = scope.source.inputs;
  const auto file = std::ranges::find_if(inputs, [&](const base::InputFile &one) {
    return one.kind == "photograph" && one.path == photo.file.text;
  });
  auto first = !scope.source.photos.contains(photo.id) || file == inputs.end()
                   ? missing_words(scope, photo)
                   : scope.tell("photographs.file-bytes", {{"file", plain(file->path)}, {"bytes", plain(std::to_string(file->bytes))}});
  return photo.caption.given() ? two_lines(std::move(first), prose(scope, photo.caption.text)) : first;
}

Inlines day_taken(const Scope &scope, const survey::Photo &photo) {
  if (photo.not_taken.given()) return plain(scope.say("voice.dash"));
  return photo.taken ? plain(untorn(date(scope, photo.taken->value))) : content::soft(untorn(scope.say("photographs.not-stated")));
}

std::vector<content::Cell> picture_cells(const Scope &scope, const survey::Photo &photo) {
  const auto found = scope.source.photos.find(photo.id);
  const std::string none = scope.say("voice.dash");
  if (found == scope.source.photos.end()) return {cell(none), cell(none)};
  const auto &picture = found->second;
  const std::string digest = picture.shown.digest;
  const auto printed = scope.say("photographs.printed-pixels", {{"pixels", pixels(scope, picture.shown.width, picture.shown.height)},
                                                                {"resolution", std::to_string(picture.per_inch)}});
  return {cell(two_lines(plain(pixels(scope, picture.given_width, picture.given_height)), plain(untorn(printed)))),
          cell(two_lines(plain(untorn(in_fours(digest.substr(0, 32)))), plain(untorn(in_fours(digest.substr(32))))))};
}

content::Row register_row(const Scope &scope, const survey::Photo &photo) {
  std::vector<content::Cell> cells = {
      cell(photo.id), cell(page_link(photo_id(photo.id))), cell(shown_words(scope, photo)),
      cell(two_lines(plain(tied(photo.at.row, photo.at.station.raw)), day_taken(scope, photo)))};
  for (auto &more : picture_cells(scope, photo)) cells.push_back(std::move(more));
  auto made = row(std::move(cells), {}, photo.span);
  made.rule_after = true; // rows of several lines
  return made;
}

content::Column two_heads(content::Column column, std::string second) {
  column.unit = std::move(second);
  return column;
}

} // namespace

content::Block photograph_register(const Scope &scope) {
  Numbering numbering;
  auto table = labelled_table(
      scope, numbering, look::register_table, scope.tell("photographs.register-caption"),
      {column(scope.say("photographs.number")), column(scope.say("photographs.page")),
       two_heads(stretching(scope.say("photographs.file")), scope.say("photographs.shows")),
       two_heads(column(scope.say("photographs.station")), scope.say("photographs.taken")),
       two_heads(column(scope.say("photographs.given")), scope.say("photographs.printed")), column(scope.say("appendices.digest"))});
  std::vector<content::Row> rows;
  for (const auto &photo : scope.survey().photos) rows.push_back(register_row(scope, photo));
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/photographs");
}

} // namespace strakebook::compose
