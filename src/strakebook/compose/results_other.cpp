#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"

/// What eye and hammer found, and what was looked for and not found.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

content::Block notes_table(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, "plain", scope.tell("notes.caption"),
                              {column(scope.say("notes.id")), column(scope.say("notes.kind")), column(scope.say("notes.where")),
                               stretching(scope.say("notes.text")),
                               column(scope.say("results.photo"), Align::right, scope.say("results.photo-unit"))});
  std::vector<content::Row> rows;
  for (const auto &note : scope.survey().notes) {
    const bool hammer = note.kind == survey::Note::Kind::hammer;
    rows.push_back(row({cell(content::strong(note.id)), cell(hammer ? scope.say("notes.hammer") : scope.say("notes.seen")),
                        cell(reach_words(scope, note.at)), cell(prose(scope, note.text.text)), cell(photo_links(scope, note.photos))},
                       note_id(note.id), note.span));
  }
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/notes");
}

content::Block none_found_list(const Scope &scope) {
  content::List list;
  for (const auto &one : scope.survey().none_found)
    list.items.push_back(scope.tell("notes.none-found", {{"what", content::strong(one.what.text)},
                                                         {"where", plain(reach_words(scope, one.at))},
                                                         {"how", answer_to(scope, one.how)}}));
  return block(std::move(list), "none-found");
}

} // namespace

std::vector<content::Block> notes_and_none_found(const Scope &scope, Numbering &numbering) {
  std::vector<content::Block> out = {sub_heading(scope, numbering, scope.say("notes.title"))};
  if (!scope.survey().notes.empty()) out.push_back(notes_table(scope, numbering));
  if (scope.survey().none_found.empty()) {
    out.push_back(paragraph(plain(scope.say("notes.none-found-silent")), look::text));
    return out;
  }
  out.push_back(item_heading(scope.say("notes.none-found-title")));
  out.push_back(none_found_list(scope));
  return out;
}

} // namespace strakebook::compose
