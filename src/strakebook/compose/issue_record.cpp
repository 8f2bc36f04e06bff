#include <algorithm>
#include <set>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/tables.h"

/// The record of issues: as the register has it, and what the survey says of each. A copy that was only typeset is not issued, and says so.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

/// One issue of this report: what the register knows of it, and one line that the survey has of it.
struct Line {
  int issue = 0;
  std::optional<base::Date> date;
  std::string digest;                          ///< of its PDF; empty: not known, or this issue
  std::vector<survey::Recipient> recipients = {};
  const survey::IssueNote *note = nullptr;
};

/// What is known of an issue apart from the survey's record: of this one, what the survey says of itself.
Line known_of(const Scope &scope, int issue) {
  const auto &survey = scope.survey();
  const auto &past = scope.source.past;
  const auto found = std::ranges::find(past, issue, &amend::PastIssue::issue);
  if (found != past.end())
    return {issue, found->date, found->digest, found->recipients};
  if (issue == survey.report.issue && issued(scope))
    return {issue, survey.report.issued ? std::optional(survey.report.issued->value) : std::nullopt, {}, survey.recipients};
  return {.issue = issue, .date = {}, .digest = {}};
}

std::vector<Line> lines_of(const Scope &scope) {
  const auto &survey = scope.survey();
  std::set<int> issues;
  for (const auto &past : scope.source.past) issues.insert(past.issue);
  for (const auto &note : survey.issue_record) issues.insert(note.issue);
  if (issued(scope)) issues.insert(survey.report.issue);
  std::vector<Line> out;
  for (const int issue : issues) {
    Line line = known_of(scope, issue);
    const auto before = out.size();
    for (const auto &note : survey.issue_record) {
      if (note.issue != issue) continue;
      line.note = &note;
      out.push_back(line);
      line = {.issue = issue, .date = {}, .digest = {}}; // the register's part stands once
    }
    if (out.size() == before) out.push_back(line);
  }
  return out;
}

Inlines date_of(const Scope &scope, const Line &line) {
  if (line.date) return plain(date(scope, *line.date));
  return line.note != nullptr && line.note->on ? plain(date(scope, line.note->on->value)) : not_given(scope);
}

/// Those that the register names, then what the survey says.
Inlines sent_to(const Scope &scope, const Line &line) {
  Inlines out;
  for (const auto &one : line.recipients) {
    if (!out.empty()) out.emplace_back(content::LineBreak{});
    out = std::move(out) + recipient_words(scope, one);
  }
  const bool more = line.note != nullptr && line.note->to.given() &&
                    std::ranges::none_of(line.recipients, [&](const survey::Recipient &one) { return one.who.text == line.note->to.text; });
  if (more) {
    if (!out.empty()) out.emplace_back(content::LineBreak{});
    out = std::move(out) + prose(scope, line.note->to.text);
  }
  return out.empty() ? not_given(scope) : out;
}

/// This issue's reason, where its line gives none, is what went wrong with the one before.
Inlines why_of(const Scope &scope, const Line &line) {
  if (line.note != nullptr && line.note->why.given()) return prose(scope, line.note->why.text);
  const auto &amendment = scope.survey().amendment;
  if (line.issue == scope.survey().report.issue && amendment && amendment->cause.given()) return prose(scope, amendment->cause.text);
  return line.note == nullptr ? plain(scope.say("voice.dash")) : not_given(scope);
}

content::Cell digest_of(const Scope &scope, const Line &line) {
  return line.digest.empty() ? cell(content::soft(scope.say("voice.dash"))) : cell(short_digest(line.digest));
}

content::Block record(const Scope &scope, Numbering &numbering, const std::vector<Line> &lines) {
  const bool digests = std::ranges::any_of(lines, [](const Line &line) { return !line.digest.empty(); });
  std::vector<content::Column> columns = {column(scope.say("issue-record.issue"), Align::right), column(scope.say("issue-record.date")),
                                          column(scope.say("issue-record.to")), stretching(scope.say("issue-record.why"))};
  if (digests) columns.insert(columns.begin() + 2, column(scope.say("issued.digest")));
  auto table = labelled_table(scope, numbering, look::plain_table, scope.tell("issue-record.caption"), std::move(columns));
  std::vector<content::Row> rows;
  for (const auto &line : lines) {
    std::vector<content::Cell> cells = {cell(content::strong(std::to_string(line.issue))), cell(date_of(scope, line)), cell(sent_to(scope, line)),
                                        cell(why_of(scope, line))};
    if (digests) cells.insert(cells.begin() + 2, digest_of(scope, line));
    rows.push_back(row(std::move(cells)));
  }
  add_rows(table, std::move(rows));
  if (digests) table.notes.push_back(plain(scope.say("issued.digest-note")));
  return block(std::move(table), "table/issues");
}

std::string this_issue(const Scope &scope) {
  const auto &report = scope.survey().report;
  const base::Fill number{"number", report.number.text}, issue{"issue", std::to_string(report.issue)}, state{"state", state_word(scope, report.state)};
  if (!issued(scope)) return scope.say("issue-record.this", {number, issue, state});
  return scope.say("issued.this", {number, issue, state, {"digest", untorn(scope.source.issued_digest)}});
}

} // namespace

content::Section issue_record(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(paragraph(plain(this_issue(scope)), look::text));
  const auto lines = lines_of(scope);
  if (lines.empty())
    out.blocks.push_back(paragraph(plain(scope.say("issue-record.none")), look::text));
  else
    out.blocks.push_back(record(scope, numbering, lines));
  return out;
}

} // namespace strakebook::compose
