#include "strakebook/compose/decision.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/told.h"
#include "strakebook/compose/wastage.h"

/// The claim, and the facts under it: the surveyor's, then what is computed from the readings.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

std::string rows_words(const Scope &scope, std::string_view zone) {
  std::vector<std::string> ids;
  for (const auto &row : scope.survey().rows)
    if (row.zone == zone)
      ids.push_back(row.id);
  return join_and(scope, ids);
}

std::string original_words(const Scope &scope, const survey::Original &original) {
  return scope.say("assessment.original",
                   {{"nominal", with_mm(scope, original.nominal)}, {"basis", original.basis}});
}

/// n used of n read, least, mean and greatest: never a mean without its low mark.
Sentence general(const Scope &scope, const assess::ZoneResult &zone) {
  const Length mean = Length::nanometres(base::round_to(*zone.mean_nm, 0).digits);
  return scope.tell_computed("assessment.general", {{"used", plain(std::to_string(zone.count.used))},
                                           {"read", plain(std::to_string(zone.count.read))},
                                           {"least", plain(remaining_text(scope, zone.zone, *zone.min))},
                                           {"at", link(mark_id(zone.least), tied_mark(zone.least))},
                                           {"greatest", plain(remaining_text(scope, zone.zone, *zone.max))},
                                           {"mean", plain(fixed_mm(mean, 2))}});
}

/// The closed sum under the worst pit.
Sentence pit_sum(const Scope &scope, const assess::ZoneResult &zone, const survey::Pit &pit,
                const assess::Subject &subject) {
  // Converted figures have more digits than a gauge shows: the sum is given with all of them, so that it closes.
  const bool converted = pit.adjacent.unit != base::Unit::millimetre || pit.depth.unit != base::Unit::millimetre;
  const std::string left = converted ? base::mm_exact(subject.remaining) : remaining_text(scope, zone.zone, subject.remaining);
  return scope.tell_computed("assessment.pit", {{"pit", link(pit_id(pit.id), pit.id)},
                                                {"adjacent", plain(with_mm(scope, pit.adjacent))},
                                                {"depth", plain(with_mm(scope, pit.depth))},
                                                {"left", plain(unit_mm(scope, left))}});
}

/// The rule of a figure, and where a share of the original follows it, what that is a share of.
std::string by(const Scope &scope, const assess::ZoneResult &zone, std::string rule) {
  return zone.weak_basis ? rule : scope.say("assessment.by-nominal", {{"rule", std::move(rule)}});
}

/// Readings of the zone, then general, local and pit wastage apart; what "local" stands for is said beside them.
Block readings(const Scope &scope, const assess::ZoneResult &zone) {
  std::optional<Sentence> text = general(scope, zone);
  if (const auto *plate = subject_of_kind(zone, assess::Subject::Kind::plate))
    add_sentence(text, low_sentence(scope, zone.zone, *plate));
  const std::string rule = by(scope, zone, scope.say("assessment.by-repeats"));
  Inlines where = label_link(mark_id(zone.worst));
  const auto wastage = wastage_sentences(scope, zone);
  if (!wastage)
    return computed(scope, *text, rule, std::move(where));
  add_sentence(text, wastage);
  const auto &local = scope.policy().local_area;
  where.emplace_back(content::LineBreak{});
  where = std::move(where) +
          content::soft(scope.say("wastage.local-area", {{"m2", figure(local.m2)}, {"source", local.source}}));
  return computed(scope, *text, rule, std::move(where));
}

/// Too few marks: how many and what share were read, beside what an opinion asks for.
std::optional<Block> too_few(const Scope &scope, const assess::ZoneResult &zone) {
  if (!zone.too_few || zone.count.planned == 0)
    return std::nullopt;
  const auto &policy = scope.policy();
  const auto text = scope.tell_computed("assessment.few",
                                        {{"read", plain(std::to_string(zone.count.read))},
                                         {"planned", plain(std::to_string(zone.count.planned))},
                                         {"share", plain(percent(scope, {zone.count.read, zone.count.planned}))},
                                         {"used", plain(std::to_string(zone.count.used))},
                                         {"marks", plain(std::to_string(policy.least_marks))},
                                         {"least", plain(percent(scope, policy.least_read))}});
  return computed(scope, text, scope.say("assessment.by-coverage"));
}

std::vector<Block> computed_facts(const Scope &scope, const Judged &judged) {
  const auto &zone = judged.result;
  std::vector<Block> out;
  if (zone.min && zone.max && zone.mean_nm)
    out.push_back(readings(scope, zone));
  if (zone.worst_pit) {
    const auto *under = subject_of_kind(zone, assess::Subject::Kind::pit);
    const auto &pit = *survey::pit_of(scope.survey(), under->id);
    std::optional<Sentence> text = pit_sum(scope, zone, pit, *under);
    add_sentence(text, low_sentence(scope, zone.zone, *under));
    out.push_back(computed(scope, *text, scope.say("assessment.by-sum"), label_link(pit_id(pit.id))));
  }
  if (auto few = too_few(scope, zone))
    out.push_back(std::move(*few));
  return out;
}

} // namespace

Block zone_line(const Scope &scope, const Judged &judged) {
  const auto &count = judged.result.count;
  const std::string indicative = judged.result.indicative ? " " + scope.say("assessment.indicative") : std::string();
  return paragraph(
      plain(scope.say("assessment.zone-line", {{"zone", judged.zone.id},
                                               {"rows", rows_words(scope, judged.zone.id)},
                                               {"original", original_words(scope, judged.zone.original) +
                                                                told_sign(scope, judged.result.told)},
                                               {"read", std::to_string(count.read)},
                                               {"planned", std::to_string(count.planned)}}) +
            indicative),
      look::lead);
}

std::vector<Block> claim(const Scope &scope, const Judged &judged) {
  std::vector<Block> out = {item_heading(scope.say("assessment.claim"))};
  if (judged.decision == nullptr) {
    append(out, paragraphs(scope, survey::Words{}, look::text));
    return out;
  }
  Inlines side =
      scope.tell("assessment.confidence", {{"confidence", answer_to(scope, judged.decision->confidence)}});
  auto words = paragraphs(scope, judged.decision->claim, look::claim);
  out.push_back(statement(scope, Rests::opinion, std::move(words), std::move(side)));
  return out;
}

std::vector<Block> facts(const Scope &scope, const Judged &judged) {
  std::vector<Block> out = {item_heading(scope.say("assessment.facts"))};
  if (judged.decision != nullptr)
    for (const auto &fact : judged.decision->facts)
      out.push_back(statement(
          scope, rests_on(fact.kind),
          {block(content::Paragraph{prose(scope, fact.text.text), look::text, {}}, {}, fact.text.span)}, {}));
  append(out, computed_facts(scope, judged));
  if (judged.result.count.used == 0)
    out.push_back(paragraph(plain(scope.say("assessment.nothing-used")), look::text));
  if (judged.zone.general_order.given()) {
    Inlines order =
        scope.tell("assessment.general-order", {{"order", prose(scope, judged.zone.general_order.text)}});
    out.push_back(statement(scope, Rests::seen, {paragraph(std::move(order), look::text)}, {}));
  }
  return out;
}

} // namespace strakebook::compose
