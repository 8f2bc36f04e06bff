#include "strakebook/compose/decision.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/low_side.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"

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
                   {{"nominal", as_written(original.nominal)}, {"basis", original.basis}});
}

Block computed(const Scope &scope, Inlines text, Inlines evidence) {
  return statement(scope, Rests::computed, {paragraph(std::move(text), look::text)}, std::move(evidence));
}

/// n used of n read, least, mean and greatest: never a mean without its low mark.
Inlines general(const Scope &scope, const assess::ZoneResult &zone) {
  const Length mean = Length::nanometres(base::round_to(*zone.mean_nm, 0).digits);
  return scope.tell("assessment.general", {{"used", plain(std::to_string(zone.count.used))},
                                           {"read", plain(std::to_string(zone.count.read))},
                                           {"least", plain(remaining_text(scope, zone.zone, *zone.min))},
                                           {"at", link(mark_id(zone.least), tied_mark(zone.least))},
                                           {"greatest", plain(remaining_text(scope, zone.zone, *zone.max))},
                                           {"mean", plain(fixed_mm(mean, 2))}});
}

/// The closed sum under the worst pit.
Inlines pit_sum(const Scope &scope, const assess::ZoneResult &zone, const survey::Pit &pit,
                const assess::Subject &subject) {
  return scope.tell("assessment.pit",
                    {{"pit", link(pit_id(pit.id), pit.id)},
                     {"adjacent", plain(as_written(pit.adjacent))},
                     {"depth", plain(as_written(pit.depth))},
                     {"left", plain(unit_mm(scope, remaining_text(scope, zone.zone, subject.remaining)))}});
}

Inlines loss_sentence(const Scope &scope, const assess::ZoneResult &zone, const assess::Subject *subject) {
  if (subject == nullptr)
    return {};
  std::string text;
  if (subject->low)
    text += " " + low_sentence(scope, zone.zone, *subject);
  if (const std::string loss = loss_text(scope, zone, *subject); !loss.empty())
    text += " " + scope.say("assessment.loss", {{"place", tied_mark(subject->id)}, {"loss", loss}});
  return text.empty() ? Inlines{} : plain(text);
}

std::vector<Block> computed_facts(const Scope &scope, const Judged &judged) {
  const auto &zone = judged.result;
  std::vector<Block> out;
  if (zone.min && zone.max && zone.mean_nm) {
    const auto *plate = subject_of_kind(zone, assess::Subject::Kind::plate);
    out.push_back(computed(scope, general(scope, zone) + loss_sentence(scope, zone, plate),
                           label_link(mark_id(zone.worst))));
  }
  if (zone.worst_pit) {
    const auto *under = subject_of_kind(zone, assess::Subject::Kind::pit);
    const auto &pit = *survey::pit_of(scope.survey(), under->id);
    out.push_back(computed(scope, pit_sum(scope, zone, pit, *under) + loss_sentence(scope, zone, under),
                           label_link(pit_id(pit.id))));
  }
  return out;
}

} // namespace

Block zone_line(const Scope &scope, const Judged &judged) {
  const auto &count = judged.result.count;
  const std::string indicative = judged.result.indicative ? " " + scope.say("assessment.indicative") : std::string();
  return paragraph(
      plain(scope.say("assessment.zone-line", {{"zone", judged.zone.id},
                                               {"rows", rows_words(scope, judged.zone.id)},
                                               {"original", original_words(scope, judged.zone.original)},
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
