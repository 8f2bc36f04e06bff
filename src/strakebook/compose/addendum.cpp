#include "strakebook/compose/addendum.h"

#include "strakebook/compose/addendum_parts.h"
#include "strakebook/compose/cautions.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/letter.h"
#include "strakebook/compose/letter_looks.h"
#include "strakebook/compose/outcomes.h"
#include "strakebook/compose/signature.h"
#include "strakebook/compose/subjects.h"

/// An addendum: a short report after repair.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

/// Which report and issue it belongs to; their digest tells the copy that it was written to.
void add_report(const Scope &scope, Entries &entries) {
  const auto &report = scope.survey().report;
  const auto *issue = past_issue(scope, report.issue);
  const Inlines day = issue != nullptr ? date_of_issue(scope, *issue)
                      : report.issued  ? plain(date(scope, report.issued->value))
                                       : not_given(scope);
  add(entries, scope.say("addendum.report"), scope.tell("addendum.report-issue", {{"number", plain(report.number.text)},
                                                                                  {"issue", content::strong(std::to_string(report.issue))},
                                                                                  {"date", day}}));
  add(entries, scope.say("addendum.report-digest"), whole_digest(scope, issue != nullptr ? issue->digest : std::string()));
}

/// What page one of the report says of refloating, word for word: the items that it waits for are below.
Inlines refloat_said(const Scope &scope) {
  const auto &answer = scope.survey().answer;
  if (!answer.refloat_conditions.given())
    return answer_to(scope, answer.refloat);
  return scope.tell("addendum.refloat-said", {{"advice", answer_to(scope, answer.refloat)}, {"conditions", prose(scope, answer.refloat_conditions.text)}});
}

Inlines gauge_words(const Scope &scope, const survey::Addendum &addendum) {
  const auto *gauge = survey::gauge_of(scope.survey(), addendum.gauge);
  if (gauge == nullptr)
    return not_given(scope);
  if (!gauge->certificate.given())
    return prose(scope, gauge->name.text);
  return scope.tell("addendum.gauge-certificate", {{"gauge", prose(scope, gauge->name.text)}, {"certificate", prose(scope, gauge->certificate.text)}});
}

Block particulars(const Scope &scope, const survey::Addendum &addendum) {
  Entries left, right;
  add_report(scope, left);
  add_answer(scope, left, scope.say("addendum.client"), scope.survey().instructions.client);
  add(left, scope.say("addendum.refloat", {{"issue", std::to_string(scope.survey().report.issue)}}), refloat_said(scope));
  add_date(scope, right, scope.say("addendum.inspected"), addendum.inspected);
  add_date(scope, right, scope.say("addendum.issued"), addendum.issued);
  add_answer(scope, right, scope.say("addendum.by"), addendum.by);
  add_answer(scope, right, scope.say("addendum.how"), addendum.how);
  if (!addendum.gauge.empty()) {
    add(right, scope.say("addendum.gauge"), gauge_words(scope, addendum));
    add_answer(scope, right, scope.say("addendum.block"), addendum.block);
  }
  return block(content::Columns{look::halves, {{keys(std::move(left), look::side_keys)}, {keys(std::move(right), look::side_keys)}}});
}

/// How many of the report's items are closed, partly closed and open, counted up to this addendum.
Sentence counted(const Scope &scope, const survey::Addendum &addendum) {
  int closed = 0, partly = 0, open = 0;
  for (const auto &item : scope.survey().recommendations) {
    const auto found = survey::outcome_of(scope.survey(), item.id, addendum.id);
    const auto outcome = found.item == nullptr ? survey::Closing::open : found.item->outcome;
    ++(outcome == survey::Closing::closed ? closed : outcome == survey::Closing::partly ? partly : open);
  }
  return scope.tell_computed("addendum.counts", {{"all", plain(std::to_string(scope.survey().recommendations.size()))},
                                                 {"closed", plain(std::to_string(closed))},
                                                 {"partly", plain(std::to_string(partly))},
                                                 {"open", plain(std::to_string(open))}});
}

std::vector<Block> remarks(const Scope &scope, const survey::Addendum &addendum) {
  if (!addendum.remarks.given())
    return {};
  std::vector<Block> out = {item_heading(scope.say("addendum.remarks"))};
  append(out, paragraphs(scope, addendum.remarks, look::text));
  return out;
}

LetterWords words_of(const Scope &scope, const survey::Addendum &addendum) {
  const auto &report = scope.survey().report;
  const std::string issue = std::to_string(report.issue), copy = copy_words(scope);
  const bool issued = !scope.source.issued_digest.empty() && addendum.issued;
  return {.title = scope.say("addendum.document", {{"vessel", scope.survey().vessel.name.text}, {"number", report.number.text},
                                                   {"issue", issue}, {"addendum", addendum.id}}),
          .head_right = scope.tell("addendum.head-right", {{"number", plain(report.number.text)}, {"issue", content::strong(issue)}, {"addendum", content::strong(addendum.id)}}),
          .foot_left = issued ? scope.say("addendum.foot", {{"date", date(scope, addendum.issued->value)}, {"copy", copy}})
                              : scope.say("addendum.foot-not-issued", {{"copy", copy}}),
          .end = scope.tell("addendum.end", {{"number", plain(report.number.text)}, {"issue", plain(issue)},
                                             {"addendum", plain(addendum.id)}, {"copy", plain(copy)}}),
          .date = addendum.issued ? base::iso(addendum.issued->value) : std::string()};
}

} // namespace

content::Document addendum(const Source &source, const survey::Addendum &addendum) {
  const house::SectionPlan none;
  const Scope scope{source, none, {}};
  const auto &report = scope.survey().report;
  auto blocks = letter_title(scope, scope.say("addendum.title", {{"addendum", addendum.id}, {"number", report.number.text},
                                                                 {"issue", std::to_string(report.issue)}}));
  blocks.push_back(particulars(scope, addendum));
  blocks.push_back(block(content::Rule{look::rule_title}));
  blocks.push_back(paragraph(counted(scope, addendum).text(), look::claim));
  blocks.push_back(paragraph(plain(scope.say("addendum.stands", {{"issue", std::to_string(report.issue)}})), look::answer));
  append(blocks, closed_items(scope, addendum));
  append(blocks, items_left(scope, addendum));
  append(blocks, remarks(scope, addendum));
  std::vector<Block> together = {item_heading(scope.say("addendum.cautions"))};
  append(together, cautions(scope));
  blocks.push_back(block(content::Together{std::move(together)}));
  append(blocks, declared_and_signed(scope, nullptr, addendum.issued));
  return letter(scope, std::move(blocks), words_of(scope, addendum));
}

} // namespace strakebook::compose
