#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/original_parts.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/thickness.h"
#include "strakebook/compose/told.h"

/// Original thickness: what is assumed of each zone, on what basis, and over which interval.
namespace strakebook::compose {

using content::plain;

namespace {

std::string interval(const Scope &scope, const survey::Zone &zone) {
  const auto drawn = drawn_original(scope, zone);
  if (!drawn.has_interval) return scope.say("original.no-interval");
  return scope.say("original.interval", {{"low", base::mm_exact(drawn.thinnest, 2)}, {"high", base::mm_exact(drawn.thickest, 2)}});
}

std::string tolerance_words(const Scope &scope, const survey::Zone &zone, const assess::ZoneResult &result) {
  if (!zone.original.tolerances.empty()) return join_and(scope, zone.original.tolerances);
  if (result.tolerances.empty()) return scope.say("original.none-named");
  return scope.say("original.none-considered", {{"tolerances", join_and(scope, result.tolerances)}});
}

/// Every tolerance that a zone is held against, with its source.
std::vector<Inlines> tolerance_notes(const Scope &scope) {
  std::vector<Inlines> notes;
  for (const auto &id : tolerances_in_use(scope)) {
    const auto &tolerance = scope.policy().tolerances.at(id);
    const base::Fill name{"tolerance", id}, source{"source", tolerance.source};
    notes.push_back(plain(tolerance.verified ? scope.say("original.tolerance-source", {name, source})
                                             : scope.say("original.tolerance-unseen", {name, source})));
  }
  return notes;
}

/// The zone's name, and the form of its bilge where that is said.
Inlines zone_words(const Scope &scope, const survey::Zone &zone) {
  using content::operator+;
  Inlines out = content::strong(zone.name.text);
  if (!zone.bilge.given()) return out;
  out.emplace_back(content::LineBreak{});
  return std::move(out) + content::soft(scope.say("works.bilge", {{"form", zone.bilge.text}}));
}

content::Block originals_table(const Scope &scope, Numbering &numbering) {
  const std::string mm = scope.say("voice.mm");
  auto table = labelled_table(scope, numbering, "plain", scope.tell("original.caption"),
                              {column(scope.say("original.zone")), column(scope.say("original.nominal"), Align::decimal, mm),
                               column(scope.say("original.basis")), stretching(scope.say("original.source")),
                               stretching(scope.say("original.tolerance")), column(scope.say("original.as-delivered"), Align::right, mm)});
  std::vector<content::Row> rows;
  for (const auto &zone : scope.survey().zones) {
    const auto &result = assess::zone_result(scope.assessment(), zone.id);
    content::Cell nominal = thickness_cell(zone.original.nominal);
    nominal.text = std::move(nominal.text) + plain(told_sign(scope, result.told));
    rows.push_back(row({cell(zone_words(scope, zone)), std::move(nominal),
                        cell(zone.original.basis), cell(answer_to(scope, zone.original.source)),
                        cell(tolerance_words(scope, zone, result)), cell(interval(scope, zone))},
                       original_id(zone.id), zone.original.span));
  }
  add_rows(table, std::move(rows));
  table.notes = tolerance_notes(scope);
  if (std::ranges::any_of(scope.assessment().zones, &assess::ZoneResult::told)) table.notes.push_back(told_legend(scope));
  return block(std::move(table), "table/original");
}

/// Readings above the original and its tolerance, each with the surveyor's answer.
std::vector<content::Block> over_original(const Scope &scope) {
  std::vector<content::Block> out;
  for (const auto &found : scope.source.findings.all()) {
    if (found.code != base::Code::reading_over_original || found.severity != base::Severity::warning) continue;
    const auto &answers = scope.survey().acknowledgements;
    const auto answer = std::ranges::find(answers, found.subject, &survey::Acknowledgement::subject);
    out.push_back(paragraph(scope.tell("original.over", {{"what", plain(found.message)},
                                                         {"answer", answer == answers.end() ? not_given(scope)
                                                                                            : prose(scope, answer->reason.text)}}),
                            look::text));
  }
  return out;
}

} // namespace

content::Section original(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(originals_table(scope, numbering));
  append(out.blocks, over_original(scope));
  for (const auto &zone : scope.survey().zones)
    if (const auto &result = assess::zone_result(scope.assessment(), zone.id); result.weak_basis)
      append(out.blocks, weak_zone(scope, numbering, zone, result));
  return out;
}

} // namespace strakebook::compose
