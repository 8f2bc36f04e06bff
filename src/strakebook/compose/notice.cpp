#include "strakebook/compose/notice.h"

#include "strakebook/compose/answer_parts.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/letter.h"
#include "strakebook/compose/letter_looks.h"
#include "strakebook/compose/notice_parts.h"
#include "strakebook/compose/signature.h"
#include "strakebook/compose/tables.h"

/// The notice that an issue is replaced, to one who had it.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

std::string number(int issue) { return std::to_string(issue); }

/// Which issue is replaced by which, and to whom this is written.
Block particulars(const Scope &scope, const survey::Recipient &recipient) {
  const auto &report = scope.survey().report;
  const auto &old = scope.source.amended->replaces;
  Entries left, right;
  add_answer(scope, left, scope.say("notice.to"), recipient.who);
  add_if_given(scope, left, scope.say("notice.how"), recipient.how);
  add_answer(scope, left, scope.say("notice.from"), scope.survey().surveyor.name);
  add_date(scope, left, scope.say("notice.date"), report.issued);
  add(right, scope.say("notice.replaced"),
      scope.tell("notice.issue-of", {{"issue", content::strong(number(old.issue))}, {"date", date_of_issue(scope, old)}}));
  add(right, scope.say("notice.digest"), whole_digest(scope, old.digest));
  add(right, scope.say("notice.by"),
      scope.tell("notice.issue-of", {{"issue", content::strong(number(report.issue))},
                                     {"date", report.issued ? plain(date(scope, report.issued->value)) : not_given(scope)}}));
  add(right, scope.say("notice.copy"), plain(copy_words(scope)));
  return block(content::Columns{look::halves, {{keys(std::move(left), look::side_keys)}, {keys(std::move(right), look::side_keys)}}});
}

/// The advice in the largest type of the page, then what changed in a line.
std::vector<Block> what_happened(const Scope &scope) {
  const auto &report = scope.survey().report;
  return {paragraph(plain(scope.say("notice.advice", {{"number", report.number.text},
                                                      {"old", number(scope.source.amended->replaces.issue)},
                                                      {"new", number(report.issue)}})),
                    look::advice),
          paragraph(changes_counted(scope).text(), look::claim)};
}

std::vector<Block> what_to_do(const Scope &scope) {
  const std::string old = number(scope.source.amended->replaces.issue);
  return {eyebrow(scope.say("notice.to-do")), paragraph(plain(scope.say("notice.to-do-text", {{"old", old}})), look::answer)};
}

std::vector<Block> how_it_came(const Scope &scope) {
  const survey::Amendment none;
  const auto &said = scope.survey().amendment ? *scope.survey().amendment : none;
  Entries entries;
  add_answer(scope, entries, scope.say("notice.cause"), said.cause);
  Inlines found = answer_to(scope, said.found_by);
  if (said.found_on)
    found = scope.tell("notice.found-on", {{"who", std::move(found)}, {"date", plain(date(scope, said.found_on->value))}});
  add(entries, scope.say("notice.found"), std::move(found));
  add_answer(scope, entries, scope.say("notice.checked"), said.checked);
  return {eyebrow(scope.say("notice.how-it-came")), keys(std::move(entries), look::side_keys)};
}

Inlines day_or_dash(const Scope &scope, const survey::Given<base::Date> &day) {
  return plain(day ? date(scope, day->value) : scope.say("voice.dash"));
}

std::vector<Block> who_was_told(const Scope &scope) {
  std::vector<Block> out = {eyebrow(scope.say("notice.told"))};
  if (!scope.survey().amendment || scope.survey().amendment->told.empty()) {
    out.push_back(paragraph(not_given(scope), look::side));
    return out;
  }
  auto table = unlabelled_table(look::small_table, {stretching(scope.say("notice.who")), stretching(scope.say("notice.told-how")),
                                                    column(scope.say("notice.told-on")), column(scope.say("notice.acknowledged"))});
  std::vector<content::Row> rows;
  for (const auto &one : scope.survey().amendment->told)
    rows.push_back(row({cell(answer_to(scope, one.who)), cell(answer_to(scope, one.how)), cell(day_or_dash(scope, one.on)),
                        cell(day_or_dash(scope, one.acknowledged))}));
  add_rows(table, std::move(rows));
  out.push_back(block(std::move(table)));
  return out;
}

std::vector<Block> how_to_check(const Scope &scope) {
  return {eyebrow(scope.say("notice.check")), paragraph(plain(scope.say("notice.check-text")), look::side)};
}

LetterWords words_of(const Scope &scope) {
  const auto &report = scope.survey().report;
  const std::string old = number(scope.source.amended->replaces.issue), now = number(report.issue);
  return {.title = scope.say("notice.document", {{"number", report.number.text}, {"old", old}}),
          .head_right = scope.tell("notice.head-right", {{"number", plain(report.number.text)}, {"old", content::strong(old)}}),
          .foot_left = scope.say("notice.foot", {{"new", now}, {"copy", copy_words(scope)}}),
          .end = scope.tell("notice.end", {{"number", plain(report.number.text)}, {"old", plain(old)}, {"copy", plain(copy_words(scope))}}),
          .date = report.issued ? base::iso(report.issued->value) : std::string()};
}

} // namespace

content::Document notice(const Source &source, const survey::Recipient &recipient, NoticeDetail detail) {
  const house::SectionPlan none;
  const Scope scope{source, none, {}};
  auto blocks = letter_title(scope, scope.say("notice.title"));
  blocks.push_back(particulars(scope, recipient));
  blocks.push_back(block(content::Rule{look::rule_title}));
  append(blocks, what_happened(scope));
  append(blocks, changes_told(scope, detail));
  auto left = what_to_do(scope), right = who_was_told(scope);
  append(left, how_it_came(scope));
  append(right, how_to_check(scope));
  blocks.push_back(block(content::Columns{look::halves, {std::move(left), std::move(right)}}));
  blocks.push_back(signature(scope, {}, nullptr, scope.survey().report.issued));
  return letter(scope, std::move(blocks), words_of(scope));
}

} // namespace strakebook::compose
