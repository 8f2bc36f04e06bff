#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// The record of issues as the survey gives it. A copy that was only typeset is not issued, and says so.
namespace strakebook::compose {

using content::plain;

namespace {

content::Block record(const Scope &scope, Numbering &numbering) {
  auto table = labelled_table(scope, numbering, look::plain_table, scope.tell("issue-record.caption"),
                              {column(scope.say("issue-record.issue"), Align::right),
                               column(scope.say("issue-record.date")), column(scope.say("issue-record.to")),
                               stretching(scope.say("issue-record.why"))});
  std::vector<content::Row> rows;
  for (const auto &note : scope.survey().issue_record)
    rows.push_back(row({cell(content::strong(std::to_string(note.issue))),
                        cell(note.on ? plain(date(scope, note.on->value)) : not_given(scope)),
                        cell(answer_to(scope, note.to)), cell(answer_to(scope, note.why))}));
  add_rows(table, std::move(rows));
  return block(std::move(table), "table/issues");
}

} // namespace

content::Section issue_record(const Scope &scope) {
  const auto &report = scope.survey().report;
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(
      paragraph(plain(scope.say("issue-record.this", {{"number", report.number.text},
                                                      {"issue", std::to_string(report.issue)},
                                                      {"state", state_word(scope, report.state)}})),
                look::text));
  if (scope.survey().issue_record.empty())
    out.blocks.push_back(paragraph(plain(scope.say("issue-record.none")), look::text));
  else
    out.blocks.push_back(record(scope, numbering));
  return out;
}

} // namespace strakebook::compose
