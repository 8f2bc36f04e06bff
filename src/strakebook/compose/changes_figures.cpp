#include <algorithm>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/subjects.h"

/// What follows from the changes: the figures of page one, and verdicts that are not what they were.
namespace strakebook::compose {

using assess::Verdict;
using content::plain;
using content::operator+;

namespace {

std::string worst_figure(const Scope &scope) {
  const auto [zone, subject] = find_subject(scope, scope.assessment().worst);
  if (subject == nullptr)
    return scope.say("voice.dash");
  return scope.say("changes.at", {{"figure", judged_text(scope, zone->zone, *subject)}, {"place", untorn(subject->id)}});
}

std::string worst_loss_figure(const Scope &scope) {
  const std::string &id = scope.assessment().worst_loss;
  const auto *share = share_at(scope, id);
  return share == nullptr ? scope.say("voice.dash")
                          : scope.say("changes.at", {{"figure", percent_figure(scope, share->nominal, 1)}, {"place", untorn(id)}});
}

std::string places_with(const Scope &scope, Verdict verdict) {
  const auto has = [&](const auto &place) { return place.standing && place.standing->result.verdict == verdict; };
  return std::to_string(std::ranges::count_if(scope.assessment().marks, has) + std::ranges::count_if(scope.assessment().pits, has));
}

std::string items_of_class(const Scope &scope, std::string_view klass) {
  return std::to_string(std::ranges::count(scope.survey().recommendations, klass, &survey::Recommendation::klass));
}

std::string read_marks(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  return scope.say("changes.of", {{"read", std::to_string(count.read)}, {"planned", std::to_string(count.planned)}});
}

content::Row figure_row(std::string name, const std::string &before, const std::string &now) {
  const bool same = before == now;
  return row({cell(std::move(name)), cell(same ? plain(before) : content::struck(before)), cell(same ? plain(now) : content::strong(now))});
}

Inlines verdict_words(const Scope &scope, Verdict verdict, Inlines (*form)(std::string)) {
  return verdict_sign(scope, verdict) + form(verdict_word(scope, verdict));
}

} // namespace

std::vector<content::Block> figures_that_follow(const Editions &both) {
  const Scope &scope = both.now;
  const auto both_of = [&](std::string name, const auto &figure) { return figure_row(std::move(name), figure(both.before), figure(both.now)); };
  auto table = unlabelled_table(look::small_table, {stretching({}), column(was_head(both), Align::right), column(is_head(both), Align::right)});
  add_rows(table, {both_of(scope.say("changes.worst"), worst_figure), both_of(scope.say("changes.worst-loss"), worst_loss_figure),
                   both_of(scope.say("changes.short"), [](const Scope &one) { return places_with(one, Verdict::falls_short); }),
                   both_of(scope.say("changes.close"), [](const Scope &one) { return places_with(one, Verdict::too_close); }),
                   both_of(scope.say("changes.class-a"), [](const Scope &one) { return items_of_class(one, "A"); }),
                   both_of(scope.say("changes.class-b"), [](const Scope &one) { return items_of_class(one, "B"); }),
                   both_of(scope.say("changes.read"), read_marks)});
  return {item_heading(scope.say("changes.figures")), block(std::move(table), "table/figures-changed")};
}

std::vector<content::Block> verdicts_moved(const Editions &both) {
  const Scope &scope = both.now;
  std::vector<content::Row> rows;
  for (const auto &moved : both.amended.changes.moved) {
    const std::string at = place_of_change(scope, moved.subject);
    rows.push_back(row({cell(content::strong(moved.zone)), cell(criterion_name(scope, moved.criterion)),
                        cell(at.empty() ? plain(moved.subject) : link(at, untorn(moved.subject))),
                        cell(verdict_words(scope, moved.before, content::struck)), cell(verdict_words(scope, moved.after, content::strong))}));
  }
  if (rows.empty())
    return {};
  auto table = unlabelled_table(look::small_table, {column(scope.say("changes.zone")), stretching(scope.say("changes.criterion")), column(scope.say("changes.where")),
                                                    column(was_head(both)), column(is_head(both))});
  add_rows(table, std::move(rows));
  return {item_heading(scope.say("changes.verdicts")), block(std::move(table), "table/verdicts-moved")};
}

} // namespace strakebook::compose
