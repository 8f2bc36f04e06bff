#include "strakebook/compose/decision.h"

#include <algorithm>
#include <map>

#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/rate_words.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"
#include "strakebook/compose/wastage.h"

/// The criteria at the zone's worst place, and the answer where they contradict each other.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;
using assess::Verdict;

namespace {

content::Cell name_cell(const Scope &scope, const assess::CriterionResult &result) {
  const std::string name = criterion_name(scope, result.criterion);
  if (!result.governs)
    return cell(link(criterion_id(result.criterion), name));
  return cell(scope.tell("assessment.governs", {{"criterion", content::strong(name)}}));
}

content::Row criterion_row(const Scope &scope, const assess::Subject &subject, const std::string &left,
                           const assess::CriterionResult &result) {
  const std::string dash = scope.say("voice.dash");
  const Inlines sign = verdict_sign(scope, result.verdict);
  if (result.verdict == Verdict::not_applicable)
    return row({name_cell(scope, result), cell(dash), cell(dash), cell(dash), cell(dash),
                cell(sign + plain(why_not_words(scope, result.criterion, result.why_not)))});
  return row({name_cell(scope, result), cell(limit_text(result.limit) + told_sign(scope, result.told)), cell(left),
              cell(margin_text(result, subject.band_nm)), cell(probability_text(scope, result.conformance)),
              cell(sign + plain(verdict_word(scope, result)) + content::soft(substantial_words(scope, result)))});
}

/// What the verdicts of this table rest on, and what the probability beside them does not count.
std::string doubt_note(const Scope &scope, const assess::Subject &subject) {
  const auto &rule = scope.policy().decision;
  if (rule.kind == policy::DecisionKind::simple_acceptance)
    return scope.say("assessment.simple-note", {{"source", rule.source}});
  return scope.say("assessment.doubt-note", {{"doubt", doubt_mm(scope, subject.band_nm)},
                                             {"factor", figure(subject.factor)},
                                             {"source", rule.source}});
}

bool any_told(const assess::Subject &subject) {
  return std::ranges::any_of(subject.results, &assess::CriterionResult::told);
}

Block criteria_table(const Scope &scope, Numbering &numbering, const Judged &judged,
                     const assess::Subject &subject) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(
      scope, numbering, look::plain_table,
      scope.tell("assessment.criteria-caption", {{"place", plain(subject_place(scope, subject.id))}}),
      {stretching(scope.say("assessment.criterion")), column(scope.say("assessment.limit"), Align::right, mm),
       column(scope.say("assessment.leaves", {{"place", subject.id}}), Align::right, mm),
       column(scope.say("assessment.margin"), Align::right, mm),
       column(scope.say("assessment.probability"), Align::right, scope.say("assessment.probability-unit")),
       column(scope.say("assessment.verdict"))});
  const std::string left = judged_text(scope, judged.zone.id, subject);
  std::vector<content::Row> rows;
  for (const auto &result : subject.results)
    rows.push_back(criterion_row(scope, subject, left, result));
  if (auto by_rate = rate_row(scope, judged.zone.id))
    rows.push_back(std::move(*by_rate));
  add_rows(table, std::move(rows));
  table.notes = {plain(doubt_note(scope, subject) + " " + scope.say("assessment.probability-note"))};
  if (subject.low)
    table.notes.push_back(low_sentence(scope, judged.zone.id, subject)->text());
  if (any_told(subject))
    table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/criteria/" + judged.zone.id);
}

std::string names(const Scope &scope, const assess::ZoneResult &zone, const std::vector<std::string> &ids) {
  std::vector<std::string> out;
  for (const auto &id : ids)
    out.push_back(signed_name(scope, zone, id));
  return join_and(scope, out);
}

std::vector<std::string> with_verdict(const assess::Subject &subject, Verdict verdict) {
  std::vector<std::string> out;
  for (const auto &result : subject.results)
    if (result.verdict == verdict)
      out.push_back(result.criterion);
  return out;
}

/// Where every criterion is met, and none by so little that it is told apart, the matrix says enough and the page stays short.
bool all_met(const assess::Subject &subject) {
  return std::ranges::all_of(subject.results,
                             [](const auto &result) { return result.verdict == Verdict::meets && !result.substantial; });
}

std::string by_doubt(const Scope &scope) {
  const auto &rule = scope.policy().decision;
  return scope.say("assessment.by-doubt", {{"rule", rule.name}, {"source", rule.source}});
}

/// "It is too close to call under ...": one sentence for each word that the house's rule has for it.
void add_too_close(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject,
                   std::optional<Sentence> &text) {
  std::map<std::string, std::vector<std::string>> by_word;
  for (const auto &result : subject.results)
    if (result.verdict == Verdict::too_close)
      by_word[verdict_word(scope, result)].push_back(result.criterion);
  for (const auto &[word, criteria] : by_word)
    add_sentence(text, scope.tell_computed("assessment.too-close", {{"place", plain(tied_mark(subject.id))},
                                                                    {"verdict", plain(word)},
                                                                    {"criteria", plain(names(scope, zone, criteria))}}));
}

Block least_margin(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject,
                   const std::vector<std::string> &met) {
  const auto &least = *std::ranges::min_element(subject.results, {}, &assess::CriterionResult::margin);
  std::optional<Sentence> text;
  add_sentence(text, scope.tell_computed("assessment.all-met",
                                         {{"place", plain(tied_mark(subject.id))},
                                          {"criteria", plain(names(scope, zone, met))},
                                          {"least", plain(signed_name(scope, zone, least.criterion))},
                                          {"margin", plain(margin_text(least, subject.band_nm))},
                                          {"doubt", plain(doubt_text(scope, subject.band_nm))}}));
  add_sentence(text, low_sentence(scope, zone.zone, subject));
  Inlines where = label_link("table/matrix");
  if (any_told(subject)) {
    where.emplace_back(content::LineBreak{});
    where = std::move(where) + told_legend(scope);
  }
  return computed(scope, *text, by_doubt(scope), std::move(where));
}

Block verdicts_in_words(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject &subject) {
  std::optional<Sentence> text;
  const auto met = with_verdict(subject, Verdict::meets), shorts = with_verdict(subject, Verdict::falls_short);
  const Inlines place = plain(tied_mark(subject.id));
  if (all_met(subject) && !met.empty())
    return least_margin(scope, zone, subject, met);
  if (!met.empty())
    add_sentence(text, scope.tell_computed("assessment.meets", {{"place", place}, {"criteria", plain(names(scope, zone, met))}}));
  add_too_close(scope, zone, subject, text);
  if (!shorts.empty())
    add_sentence(text, scope.tell_computed("assessment.falls-short", {{"place", place}, {"criteria", plain(names(scope, zone, shorts))}}));
  if (!text)
    add_sentence(text, scope.tell_computed("assessment.no-criterion", {{"place", place}}));
  return computed(scope, *text, by_doubt(scope), page_link(section_id("criteria")));
}

/// With a weak basis: what follows from it, and the loss as a range over the nominal thicknesses that the readings leave alive.
Block on_weak_basis(const Scope &scope, const Judged &judged, const assess::Subject &subject) {
  const auto &zone = judged.result;
  std::vector<std::string> alive;
  for (const auto &nominal : zone.nominals)
    if (nominal.state == assess::Nominal::State::alive)
      alive.push_back(base::mm_exact(nominal.nominal, 0));
  std::optional<Sentence> text = scope.tell_computed("assessment.weak", {{"basis", plain(judged.zone.original.basis)}});
  if (zone.alive_low && zone.alive_high)
    add_sentence(text, scope.tell_computed("assessment.alive",
                                           {{"place", plain(tied_mark(subject.id))},
                                            {"range", plain(range_words(scope, zone, *zone.alive_low, *zone.alive_high))},
                                            {"nominals", plain(unit_mm(scope, join_and(scope, alive)))}}));
  return computed(scope, *text, scope.say("assessment.by-nominals"), page_link(original_id(zone.zone)));
}

} // namespace

std::vector<Block> criteria_at_worst(const Scope &scope, Numbering &numbering, const Judged &judged) {
  const auto *subject = worst_of(judged.result);
  if (subject == nullptr)
    return {};
  std::vector<Block> out;
  const bool without_table = all_met(*subject) && !rate_tells(scope, judged.zone.id);
  if (!without_table) {
    const bool conflict = judged.result.conflict;
    out.push_back(
        item_heading(conflict ? scope.say("assessment.in-conflict") : scope.say("assessment.criteria")));
    out.push_back(criteria_table(scope, numbering, judged, *subject));
  }
  out.push_back(verdicts_in_words(scope, judged.result, *subject));
  if (auto kept = without_table ? rate_sentence(scope, judged.zone.id) : std::nullopt)
    out.push_back(computed(scope, *kept, scope.say("comparison.by-life", {{"source", scope.policy().years.source}}), page_link(section_id("comparison"))));
  if (auto otherwise = read_otherwise(scope, judged.result))
    out.push_back(std::move(*otherwise));
  if (judged.result.weak_basis)
    out.push_back(on_weak_basis(scope, judged, *subject));
  return out;
}

std::vector<Block> conflict_answer(const Scope &scope, const Judged &judged) {
  if (!judged.result.conflict)
    return {};
  std::vector<Block> out = {item_heading(scope.say("assessment.answer"))};
  const auto *decision = judged.decision;
  if (decision == nullptr || !decision->conflict) {
    append(out, paragraphs(scope, survey::Words{}, look::text));
    return out;
  }
  const auto &answer = *decision->conflict;
  Inlines text = scope.tell("assessment.prefers",
                            {{"criterion", content::strong(criterion_name(scope, answer.prefers))}}) +
                 plain(" ") + answer_to(scope, answer.because);
  out.push_back(statement(scope, Rests::opinion,
                          {block(content::Paragraph{std::move(text), look::text, {}}, {}, answer.span)},
                          evidence_list(scope, answer.marks)));
  return out;
}

} // namespace strakebook::compose
