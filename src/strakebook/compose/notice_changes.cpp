#include <algorithm>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/notice_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/steel/survey/closing.h"

/// The changes as a notice tells them: what was said, what is said now, and why.
namespace strakebook::compose {

using amend::Change;
using amend::How;
using amend::Kind;
using content::plain;
using content::operator+;

namespace {

enum class Group { decisions, readings, others };

Group group_of(const Change &change) {
  if (change.kind <= Kind::answer)
    return Group::decisions;
  const bool measured = change.kind == Kind::reading || change.kind == Kind::pit || change.kind == Kind::doubler;
  return measured ? Group::readings : Group::others;
}

std::vector<const Change *> changes_in(const Scope &scope, Group group) {
  std::vector<const Change *> out;
  for (const auto &change : scope.source.amended->changes.all)
    if (group_of(change) == group)
      out.push_back(&change);
  return out;
}

/// Keys of the survey file that say what is to be done; the others of a decision say it in words and why, and stand in the report.
bool tells(const Change &change, std::string_view field) {
  constexpr std::string_view told[] = {"action", "criterion", "class", "by", "refloat", "next-survey-by"};
  return group_of(change) != Group::decisions || std::ranges::find(told, field) != std::end(told);
}

/// A value as the file has it, said as the report says it.
Inlines value_words(const Scope &scope, std::string_view field, const std::string &value) {
  if (value.empty())
    return content::italic(scope.say("notice.not-there"));
  if (field == "action")
    return plain(action_name(scope, value));
  if (field == "criterion")
    return plain(criterion_name(scope, value));
  const auto day = base::parse_date(value);
  return day ? plain(date(scope, *day)) : prose(scope, value);
}

/// One side of a change: each field with its value, a line each.
Inlines side_of(const Scope &scope, const Change &change, std::string amend::Difference::*side, const std::optional<base::Length> &left) {
  Inlines out;
  const auto add = [&](Inlines line) {
    if (!out.empty())
      out.emplace_back(content::LineBreak{});
    out = std::move(out) + std::move(line);
  };
  for (const auto &difference : change.differences)
    if (tells(change, difference.field))
      add(scope.tell("notice.field", {{"field", content::soft(field_words(difference.field))},
                                      {"value", value_words(scope, difference.field, difference.*side)}}));
  if (left && change.kind == Kind::pit)
    add(scope.tell("notice.field", {{"field", content::soft(scope.say("notice.left"))}, {"value", content::strong(short_mm(*left))}}));
  return out;
}

Inlines before_words(const Scope &scope, const Change &change) {
  if (change.how == How::added)
    return content::italic(scope.say("notice.not-there"));
  return side_of(scope, change, &amend::Difference::before, change.remaining_before);
}

Inlines after_words(const Scope &scope, const Change &change) {
  if (change.how == How::withdrawn)
    return content::italic(scope.say("notice.withdrawn"));
  return side_of(scope, change, &amend::Difference::after, change.remaining_after);
}

/// "decision W" -> "W".
std::string last_word(const std::string &subject) { return subject.substr(subject.find_last_of(' ') + 1); }

/// The subject with its place or zone.
Inlines subject_of(const Scope &scope, const Change &change) {
  Inlines out = content::strong(untorn(change.subject));
  if (const auto where = subject_place(scope, change.subject); where != change.subject)
    out = content::strong(where);
  if (change.kind == Kind::decision)
    out = std::move(out) + plain(scope.say("voice.list-between") + zone_name(scope, last_word(change.subject)));
  if (const auto *item = change.kind == Kind::recommendation ? survey::recommendation_of(scope.survey(), last_word(change.subject)) : nullptr)
    out = std::move(out) + plain(scope.say("voice.list-between")) + prose(scope, item->title.text);
  return out;
}

content::Row change_row(const Scope &scope, const Change &change) {
  auto out = row({cell(subject_of(scope, change)), cell(before_words(scope, change)), cell(after_words(scope, change)),
                  cell(answer_to(scope, change.why))},
                 {}, change.span);
  out.rule_after = true;
  return out;
}

content::Row stands_row(const Scope &scope, const amend::Stands &one) {
  content::Cell same = cell(scope.say("notice.stands"));
  same.across = 2;
  return row({cell(content::strong(zone_name(scope, one.zone))), std::move(same), cell(answer_to(scope, one.why))});
}

void add_group(content::Table &table, const Scope &scope, std::string head, const std::vector<const Change *> &changes) {
  if (changes.empty())
    return;
  content::RowGroup group{.head = content::strong(std::move(head)), .id = {}, .rows = {}};
  for (const auto *change : changes)
    group.rows.push_back(change_row(scope, *change));
  table.groups.push_back(std::move(group));
}

void add_stands(content::Table &table, const Scope &scope) {
  const auto &all = scope.source.amended->changes.stands;
  if (all.empty())
    return;
  content::RowGroup group{.head = content::strong(scope.say("notice.standing")), .id = {}, .rows = {}};
  for (const auto &one : all)
    group.rows.push_back(stands_row(scope, one));
  table.groups.push_back(std::move(group));
}

} // namespace

Sentence changes_counted(const Scope &scope) {
  const auto count = [&](Group group) { return plain(std::to_string(changes_in(scope, group).size())); };
  const Sentence decided = scope.source.amended->changes.decision_changed() ? scope.tell_computed("notice.decision-changed")
                                                                           : scope.tell_computed("notice.no-decision-changed");
  return decided + scope.tell_computed("notice.counts", {{"decisions", count(Group::decisions)},
                                                         {"readings", count(Group::readings)},
                                                         {"others", count(Group::others)}});
}

std::vector<content::Block> changes_told(const Scope &scope, NoticeDetail detail) {
  const auto issue_said = [&](int issue) { return scope.say("notice.issue-said", {{"issue", std::to_string(issue)}}); };
  auto table = unlabelled_table(look::small_table,
                                {stretching(scope.say("notice.what")), stretching(issue_said(scope.source.amended->replaces.issue)),
                                 stretching(issue_said(scope.survey().report.issue)), stretching(scope.say("notice.why"))});
  if (detail != NoticeDetail::counts)
    add_group(table, scope, scope.say("notice.decisions"), changes_in(scope, Group::decisions));
  if (detail == NoticeDetail::every_change)
    add_stands(table, scope);
  if (detail <= NoticeDetail::decisions_and_readings)
    add_group(table, scope, scope.say("notice.readings"), changes_in(scope, Group::readings));
  if (detail == NoticeDetail::every_change)
    add_group(table, scope, scope.say("notice.others"), changes_in(scope, Group::others));
  std::vector<content::Block> out;
  if (!table.groups.empty())
    out.push_back(block(std::move(table)));
  if (detail != NoticeDetail::every_change)
    out.push_back(paragraph(plain(scope.say("notice.left-out")), look::note));
  return out;
}

} // namespace strakebook::compose
