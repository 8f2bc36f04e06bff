#include <algorithm>
#include <set>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/subjects.h"

/// What is decided otherwise, what stands all the same, and everything that is neither a decision nor a reading.
namespace strakebook::compose {

using amend::Change;
using amend::How;
using amend::Kind;
using content::plain;
using content::operator+;

namespace {

using Fields = std::set<std::string>;

/// A decision or a recommendation in a line, and the fields of the survey file that this line shows.
struct Statement {
  std::string words; ///< empty: it is not in this issue
  Fields fields;
};

Statement decision_statement(const Scope &scope, const std::string &zone) {
  Statement out{{}, {"action", "criterion"}};
  const auto *decision = decision_for(scope, zone);
  if (decision == nullptr)
    return out;
  const std::string action = capitalised(action_name(scope, decision->action));
  out.words = decision->criterion.empty()
                  ? action
                  : scope.say("changes.decided", {{"action", action}, {"criterion", criterion_name(scope, decision->criterion)}});
  return out;
}

Statement item_statement(const Scope &scope, const std::string &id) {
  Statement out{{}, {"class", "by", "action"}};
  const auto &items = scope.survey().recommendations;
  const auto found = std::ranges::find(items, id, &survey::Recommendation::id);
  if (found == items.end())
    return out;
  const std::string action = found->action.empty() ? found->title.text : action_name(scope, found->action);
  const base::Fill klass{"class", found->klass.empty() ? scope.say("voice.dash") : found->klass};
  out.words = found->by ? scope.say("changes.asked-by", {klass, {"date", date(scope, found->by->value)}, {"action", action}})
                        : scope.say("changes.asked", {klass, {"action", action}});
  return out;
}

Statement answer_statement(const Scope &scope) {
  return {scope.say("changes.refloat", {{"advice", scope.survey().answer.refloat.text}}), {"refloat"}};
}

std::string id_of(const std::string &subject) {
  const auto blank = subject.find(' ');
  return blank == subject.npos ? std::string() : subject.substr(blank + 1);
}

std::optional<Statement> statement_of(const Scope &scope, const Change &change) {
  if (change.kind == Kind::decision)
    return decision_statement(scope, id_of(change.subject));
  if (change.kind == Kind::recommendation)
    return item_statement(scope, id_of(change.subject));
  return change.kind == Kind::answer ? std::optional(answer_statement(scope)) : std::nullopt;
}

/// Everything that was written of a thing that is new or gone, in a line.
std::string all_of(const Change &change, std::string amend::Difference::*side) {
  std::string out;
  for (const auto &one : change.differences)
    if (!(one.*side).empty())
      out += (out.empty() ? "" : "; ") + field_words(one.field) + ": " + one.*side;
  return out;
}

Shown whole_thing(const Scope &scope, const Change &change) {
  if (change.how == How::added)
    return {content::soft(scope.say("voice.dash")), content::strong(scope.say("changes.is-new") + " ") + plain(all_of(change, &amend::Difference::after))};
  return {content::struck(all_of(change, &amend::Difference::before)), content::strong(scope.say("changes.is-gone"))};
}

/// One line of the table: what, old and new.
struct Line {
  Inlines what;
  Shown shown;
};

/// What a decision's line does not show is left to these; of anything else, all of it.
std::vector<Line> lines_of(const Editions &both, const Change &change) {
  std::vector<Line> out;
  const auto statement = statement_of(both.now, change);
  const Fields shown = statement ? statement->fields : Fields{};
  if (change.how != How::changed)
    return {{{}, whole_thing(both.now, change)}};
  for (const auto &one : change.differences)
    if (!shown.contains(one.field) && !(is_measured(change.kind) && is_figure(one)))
      out.push_back({content::soft(field_words(one.field)), shown_difference(both.now, one.before, one.after)});
  return out;
}

/// The reason of a decision stands beside its line.
Inlines reason_below(const Editions &both, const Change &change) {
  const bool above = change.kind <= Kind::answer;
  return above ? content::soft(both.now.say("changes.as-above")) : reason_words(both.now, change);
}

/// The name and the reason stand once, in the first line.
std::vector<content::Row> rows_of(const Editions &both, const Change &change) {
  std::vector<content::Row> rows;
  for (auto &line : lines_of(both, change)) {
    const bool first = rows.empty();
    Inlines what = first ? subject_words(both.now, change) : Inlines{};
    if (first && !line.what.empty())
      what.emplace_back(content::LineBreak{});
    rows.push_back(row({cell(std::move(what) + std::move(line.what)), cell(std::move(line.shown.before)), cell(std::move(line.shown.now)),
                        cell(first ? reason_below(both, change) : Inlines{}),
                        first ? page_cell(both.now, change.subject) : cell(std::string())},
                       {}, change.span));
    rows.back().changed = true;
  }
  if (!rows.empty())
    rows.back().rule_after = true;
  return rows;
}

/// Old and new in a line; where that line is the same, both plain, and the words under it differ.
content::Row decision_row(const Editions &both, const Change &change) {
  const std::string before = statement_of(both.before, change)->words, now = statement_of(both.now, change)->words;
  Shown shown = before == now ? Shown{plain(before), plain(now)} : shown_difference(both.now, before, now);
  if (before == now) {
    shown.now.emplace_back(content::LineBreak{});
    shown.now = std::move(shown.now) + content::soft(both.now.say("changes.other-words"));
  }
  auto out = row({cell(subject_words(both.now, change)), cell(std::move(shown.before)), cell(std::move(shown.now)), cell(reason_words(both.now, change)),
                  page_cell(both.now, change.subject)},
                 {}, change.span);
  out.changed = out.rule_after = true;
  return out;
}

content::Table table_of(const Editions &both) {
  return unlabelled_table(look::items_table, {stretching(both.now.say("changes.what")), stretching(said_head(both)), stretching(says_head(both)),
                                                stretching(both.now.say("changes.why")), column({}, Align::right)});
}

content::Row standing_row(const Editions &both, const amend::Stands &stands) {
  const Scope &scope = both.now;
  const Inlines zone = scope.tell("changes.stands", {{"zone", content::strong(stands.zone)}, {"name", plain(zone_name(scope, stands.zone))}});
  auto out = row({cell(zone), cell(decision_statement(both.before, stands.zone).words), cell(decision_statement(scope, stands.zone).words),
                  cell(answer_to(scope, stands.why)), cell(page_link(zone_id(stands.zone)))});
  out.rule_after = true;
  return out;
}

std::vector<content::Block> under(std::string head, content::Table table, std::vector<content::Row> rows, std::string id) {
  if (rows.empty())
    return {};
  add_rows(table, std::move(rows));
  return {item_heading(std::move(head)), block(std::move(table), std::move(id))};
}

void add(std::vector<content::Row> &to, std::vector<content::Row> more) {
  for (auto &one : more)
    to.push_back(std::move(one));
}

} // namespace

std::vector<content::Block> decisions_changed(const Editions &both) {
  std::vector<content::Row> rows;
  for (const auto &change : both.amended.changes.all)
    if (change.kind <= Kind::answer)
      rows.push_back(decision_row(both, change));
  for (const auto &stands : both.amended.changes.stands)
    rows.push_back(standing_row(both, stands));
  return under(both.now.say("changes.decisions"), table_of(both), std::move(rows), "table/decisions-changed");
}

std::vector<content::Block> others_changed(const Editions &both) {
  std::vector<content::Row> rows;
  for (const auto &change : both.amended.changes.all) {
    const bool shown_above = is_measured(change.kind) && change.how != How::changed;
    if (!shown_above)
      add(rows, rows_of(both, change));
  }
  return under(both.now.say("changes.everything-else"), table_of(both), std::move(rows), "table/others-changed");
}

} // namespace strakebook::compose
