#include "strakebook/compose/criteria_parts.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/told.h"

/// Working of the rule formulas: enough printed to work them again by hand.
namespace strakebook::compose {

using content::plain;
using content::operator+;

namespace {

std::string plating_word(const Scope &scope, const std::string &key) {
  if (key.ends_with("bilge")) return scope.say("criteria.bilge");
  return key.ends_with("bottom") ? scope.say("criteria.bottom") : scope.say("criteria.side");
}

std::string factor(base::Ratio value) {
  constexpr int places = 4; // a millimetre of spacing moves f by 0.0013
  std::string text = base::to_text(base::round_to(value, places));
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string factors(const Scope &scope, const policy::Criterion &criterion, const policy::RuleWorking &working) {
  if (criterion.passenger) return scope.say("criteria.factor", {{"f", factor(working.f)}});
  return scope.say("criteria.factors", {{"f", factor(working.f)}, {"b", factor(working.b)}, {"c", factor(working.c)}});
}

/// In few words; the note below the table says what they stand for.
std::string reading_words(const Scope &scope, const policy::OtherReading &other) {
  const base::Fill limit{"mm", limit_text(other.limit)};
  switch (other.reading) {
  case policy::RuleReading::floor_times_b: return scope.say("criteria.floor-times-b", {limit});
  case policy::RuleReading::local_wear: return scope.say("criteria.local-wear", {limit});
  case policy::RuleReading::local_wear_under_floor: return scope.say("criteria.local-wear-under-floor", {limit});
  }
  return {};
}

std::string read_otherwise_words(const Scope &scope, const policy::RuleWorking &working) {
  std::vector<std::string> parts;
  for (const auto &other : working.others) parts.push_back(reading_words(scope, other));
  return parts.empty() ? scope.say("voice.dash") : base::joined(parts, scope.say("criteria.limit-between"));
}

content::Row working_row(const Scope &scope, const std::string &key, const policy::Criterion &criterion,
                         const policy::RuleWorking &working) {
  return row({cell(criterion.name), cell(plain(plating_word(scope, key)) + content::soft(factors(scope, criterion, working))),
              cell(base::mm_text(working.by_length, 3)), cell(base::mm_text(working.by_draught, 3)),
              cell(working.floored ? scope.say("criteria.floored") : scope.say("criteria.not-floored")),
              cell(content::strong(limit_text(working.limit))), cell(read_otherwise_words(scope, working))});
}

/// A figure of the hull as written, signed where somebody told it; a dash where there is none.
std::string hull_figure(const Scope &scope, const std::optional<survey::LengthFact> &fact) {
  if (!fact) return scope.say("voice.dash");
  return as_written(fact->length) + told_sign(scope, fact->from.origin == base::Origin::told);
}

/// The formula of a criterion with the layout's own figures, and the hull's figures that went into it.
std::string formula(const Scope &scope, const policy::Criterion &criterion, const policy::RuleWorking &working) {
  const auto &vessel = scope.survey().vessel;
  const base::Fill name{"criterion", criterion.name}, draught{"draught", hull_figure(scope, vessel.draught)},
      spacing{"spacing", unit_mm(scope, base::mm_exact(working.spacing, 0)) + told_sign(scope, vessel.frame_spacing && vessel.frame_spacing->from.origin == base::Origin::told)},
      length{"length", hull_figure(scope, vessel.length)};
  if (!criterion.passenger) return scope.say("criteria.working-note", {name, length, draught, spacing, {"wear", percent(scope, criterion.rule->local_wear)}});
  const auto &rule = *criterion.passenger;
  const base::Fill by_draught{"by-draught", figure(rule.draught_factor)}, by_length{"by-length", figure(rule.length_factor)};
  if (vessel.waterline_length)
    return scope.say("criteria.passenger-note", {name, by_draught, by_length, draught, spacing,
                                                 {"waterline", hull_figure(scope, vessel.waterline_length)}});
  return scope.say("criteria.passenger-note-length", {name, by_draught, by_length, draught, spacing, length});
}

} // namespace

content::Block workings_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "plain", scope.tell("criteria.working-caption"),
                              {stretching(scope.say("criteria.name")), column(scope.say("criteria.plating")),
                               column(scope.say("criteria.by-length"), Align::decimal, mm), column(scope.say("criteria.by-draught"), Align::decimal, mm),
                               column(scope.say("criteria.floor")), column(scope.say("criteria.minimum"), Align::decimal, mm),
                               stretching(scope.say("criteria.otherwise"))});
  std::vector<content::Row> rows;
  const policy::Criterion *noted = nullptr;
  for (const auto &[key, working] : scope.assessment().workings) {
    const auto &used = *criterion(scope, key.substr(0, key.rfind('/')));
    rows.push_back(working_row(scope, key, used, working));
    if (noted != &used) table.notes.push_back(plain(formula(scope, used, working)));
    noted = &used;
  }
  add_rows(table, std::move(rows));
  table.notes.push_back(plain(scope.say("criteria.working-exact")));
  return block(std::move(table), "table/workings");
}

} // namespace strakebook::compose
