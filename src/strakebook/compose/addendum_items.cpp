#include "strakebook/compose/addendum_parts.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/outcomes.h"
#include "strakebook/compose/tables.h"

/// What became of each item of the report.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

Inlines class_line(const Scope &scope, const survey::Recommendation &item) {
  return scope.tell("recommendations.class", {{"class", item.klass.empty() ? not_given(scope) : content::strong(item.klass)},
                                              {"deadline", deadline_words(scope, item)}});
}

Inlines outcome(const Scope &scope, const survey::ClosedItem &closed) {
  const Inlines word = content::strong(closing_word(scope, closed.outcome));
  if (!closed.on)
    return word;
  return scope.tell("addendum.outcome-on", {{"outcome", word}, {"date", plain(date(scope, closed.on->value))}});
}

Block answers(const Scope &scope, const survey::ClosedItem &closed) {
  Entries entries;
  add(entries, scope.say("addendum.outcome"), outcome(scope, closed));
  if (closed.outcome != survey::Closing::open || closed.evidence.given())
    add_answer(scope, entries, scope.say("addendum.evidence"), closed.evidence);
  if (closed.outcome != survey::Closing::closed)
    add_answer(scope, entries, scope.say("addendum.left"), closed.left);
  std::vector<std::string> photos;
  for (const auto &photo : closed.photos)
    photos.push_back(scope.say("voice.photo", {{"n", photo}}));
  if (!photos.empty())
    add(entries, scope.say("addendum.photographs"), plain(join_and(scope, photos)));
  return keys(std::move(entries), look::item_keys);
}

Block item(const Scope &scope, const survey::Addendum &addendum, const survey::ClosedItem &closed, std::vector<Block> before) {
  const auto *asked = survey::recommendation_of(scope.survey(), closed.item);
  std::vector<Block> middle, side;
  if (asked != nullptr) {
    content::Heading title{.level = 2, .number = {}, .text = prose(scope, asked->title.text), .in_contents = false, .text_style = look::item_title};
    middle = {block(std::move(title), {}, closed.span), paragraph(plain(reach_words(scope, asked->at)), look::item_place)};
    side = {paragraph(class_line(scope, *asked), look::class_line)};
    if (asked->proof.given())
      side.push_back(paragraph(scope.tell("addendum.proof", {{"proof", prose(scope, asked->proof.text)}}), look::side));
  }
  middle.push_back(answers(scope, closed));
  before.push_back(block(content::Rule{look::rule_item}));
  before.push_back(block(content::Columns{look::item_grid, {{paragraph(plain(closed.item), look::item_number)}, std::move(middle), std::move(side)}}));
  append(before, new_readings(scope, addendum, closed));
  return block(content::Together{std::move(before)});
}

content::Row open_row(const Scope &scope, const survey::Addendum &addendum, const survey::Recommendation &one) {
  const auto found = survey::outcome_of(scope.survey(), one.id, addendum.id);
  return row({cell(content::strong(one.id)), cell(one.klass), cell(prose(scope, one.title.text)), cell(answer_to(scope, one.binds)),
              cell(reach_words(scope, one.at)), cell(deadline_words(scope, one)),
              cell(found.item == nullptr ? scope.say("outcome.open") : closing_word(scope, found.item->outcome))});
}

} // namespace

std::vector<Block> closed_items(const Scope &scope, const survey::Addendum &addendum) {
  std::vector<Block> out, before = {item_heading(scope.say("addendum.items"))};
  for (const auto &closed : addendum.closes) {
    out.push_back(item(scope, addendum, closed, std::move(before)));
    before.clear();
  }
  append(out, new_readings_note(scope, addendum));
  return out;
}

std::vector<Block> items_left(const Scope &scope, const survey::Addendum &addendum) {
  std::vector<Block> out = {item_heading(scope.say("addendum.open"))};
  const auto open = survey::open_items(scope.survey(), addendum.id);
  if (open.empty()) {
    out.push_back(paragraph(plain(scope.say("addendum.none-open")), look::text));
    return out;
  }
  auto table = unlabelled_table(look::items_table,
                                {column({}), column(scope.say("answer.class")), stretching(scope.say("answer.what")), stretching(scope.say("answer.who")),
                                 column(scope.say("answer.where")), stretching(scope.say("answer.deadline")), column(scope.say("addendum.state"))});
  std::vector<content::Row> rows;
  for (const auto *one : open)
    rows.push_back(open_row(scope, addendum, *one));
  add_rows(table, std::move(rows));
  out.push_back(block(std::move(table)));
  return {block(content::Together{std::move(out)})};
}

} // namespace strakebook::compose
