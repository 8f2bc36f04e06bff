#include <cmath>

#include "strakebook/base/approximate.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/tables.h"
#include "strakebook/compose/unseen.h"

/// The deepest pit to expect in all of a zone, from blocks of it that were looked over whole.
namespace strakebook::compose {

using content::plain;

namespace {

constexpr int mm_places = 2, error_places = 3, fit_places = 2, period_places = 1;
constexpr double hundredths = 100;

std::string share_words(const Scope &scope, double share) { return probability_text(scope, share); }

/// Whole where it is whole.
std::string period_text(Ratio period) {
  const Ratio r = base::reduced(period);
  return base::to_text(base::round_to(r, r.den == 1 ? 0 : period_places));
}

/// What was looked over, as the surveyor wrote it.
Inlines blocks_line(const Scope &scope, const survey::PitBlocks &blocks) {
  std::vector<std::string> depths;
  for (const auto &one : blocks.deepest) depths.push_back(in_mm(one));
  const InlineFill n{"n", plain(std::to_string(blocks.blocks))}, area{"area", plain(figure(blocks.block_m2))};
  const InlineFill chosen{"chosen", prose(scope, blocks.chosen.text)}, listed{"depths", plain(base::joined(depths, scope.say("voice.list-between")))};
  if (blocks.gauge.empty()) return scope.tell("unseen.blocks-line", {n, area, chosen, listed});
  const auto *gauge = survey::gauge_of(scope.survey(), blocks.gauge);
  return scope.tell("unseen.blocks-by-gauge",
                    {n, area, chosen, listed, {"gauge", plain(gauge && gauge->name.given() ? gauge->name.text : blocks.gauge)}});
}

Sentence refusal_sentence(const Scope &scope, const unseen::PitDepths &pits) {
  const InlineFill n{"n", plain(std::to_string(pits.blocks))};
  switch (pits.refused) {
  case unseen::Refusal::few_blocks:
    return scope.tell_computed("unseen.refused-few", {n, {"least", plain(std::to_string(scope.policy().unseen.least_blocks))}});
  case unseen::Refusal::blocks_without_pits:
    return scope.tell_computed("unseen.refused-without", {n, {"without", plain(std::to_string(pits.without_pits))}});
  case unseen::Refusal::no_area: return scope.tell_computed("unseen.refused-area");
  case unseen::Refusal::all_alike: return scope.tell_computed("unseen.refused-alike", {n});
  case unseen::Refusal::all_seen:
  case unseen::Refusal::none: break;
  }
  return scope.tell_computed("unseen.refused-seen", {n});
}

Sentence refused(const Scope &scope, const unseen::PitDepths &pits) {
  const Inlines seen = plain(unit_mm(scope, base::mm_exact(pits.deepest_seen)));
  const Sentence why = refusal_sentence(scope, pits);
  if (pits.refused == unseen::Refusal::all_seen) return why + scope.tell_computed("unseen.deepest-there", {{"seen", seen}});
  return why + scope.tell_computed("unseen.not-deepest", {{"seen", seen}});
}

content::Row law_row(const Scope &scope, std::string name, const unseen::Gumbel &law, double level) {
  std::vector<content::Cell> cells = {cell(std::move(name)), cell(rounded(law.location, error_places)), dash_cell(scope),
                                      cell(rounded(law.scale, error_places)), dash_cell(scope), cell(content::strong(mm_near(level))),
                                      dash_cell(scope), dash_cell(scope), dash_cell(scope)};
  return row(std::move(cells));
}

content::Row likelihood_row(const Scope &scope, const unseen::Expected &found) {
  auto out = law_row(scope, scope.say("unseen.by-likelihood"), found.by_likelihood.law, found.level);
  out.cells[2] = cell(rounded(found.by_likelihood.location_error, error_places));
  out.cells[4] = cell(rounded(found.by_likelihood.scale_error, error_places));
  out.cells[6] = cell(rounded(found.error, error_places));
  out.cells[7] = cell(scope.say("results.interval-range", {{"low", mm_down(found.low)}, {"high", mm_up(found.high)}}));
  out.cells[8] = cell(mm_up(found.upper));
  return out;
}

content::Block law_table(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const unseen::Expected &found) {
  const std::string mm = scope.say("voice.mm"), confidence = percent(scope, scope.policy().unseen.confidence);
  auto table = labelled_table(
      scope, numbering, "summary",
      scope.tell("unseen.law-caption", {{"zone", plain(zone.name.text)}, {"area", plain(figure(*zone.area_m2))}, {"period", plain(period_text(found.period))}}),
      {stretching(scope.say("unseen.fitted-by")), column(scope.say("unseen.location"), Align::decimal, mm),
       column(scope.say("unseen.error"), Align::decimal, mm), column(scope.say("unseen.scale"), Align::decimal, mm),
       column(scope.say("unseen.error"), Align::decimal, mm), column(scope.say("unseen.deepest"), Align::decimal, mm),
       column(scope.say("unseen.error"), Align::decimal, mm), column(scope.say("unseen.interval"), Align::right, confidence),
       column(scope.say("unseen.at-most"), Align::decimal, confidence)});
  const double reduced = unseen::reduced_variate(static_cast<double>(found.period.num) / static_cast<double>(found.period.den));
  add_rows(table, {likelihood_row(scope, found),
                   law_row(scope, scope.say("unseen.by-l-moments"), found.by_l_moments, unseen::level_at(found.by_l_moments, reduced))});
  table.notes = {blocks_line(scope, *zone.pit_blocks), plain(scope.say("unseen.law-note"))};
  return block(std::move(table), "table/deepest/" + zone.id);
}

/// What would be left under such a pit, beside the mean of the zone; against the limit that the zone is measured by.
/// Where one as deep as any in the blocks is known, that one is taken.
std::optional<Sentence> beside(const Scope &scope, const std::string &zone, const unseen::Expected &found, double deepest_seen) {
  if (!found.beside_mean) return std::nullopt;
  const InlineFill mean{"mean", plain(unit_mm(scope, mm_near(*found.beside_mean + found.level)))};
  const double beside_mean = *found.beside_mean + std::min(0.0, found.level - deepest_seen);
  if (beside_mean <= 0) return scope.tell_computed("unseen.through", {mean});
  const InlineFill left{"left", plain(unit_mm(scope, mm_down(beside_mean)))};
  const auto limit = main_limit(scope, zone);
  if (!limit) return scope.tell_computed("unseen.beside", {mean, left});
  return scope.tell_computed("unseen.beside-limit", {mean, left, {"limit", plain(unit_mm(scope, limit_text(limit->remaining)))}});
}

Sentence fit_sentence(const Scope &scope, const unseen::Expected &found) {
  const auto &rule = scope.policy().unseen;
  const InlineFill a2{"a2", plain(rounded(found.a2, fit_places))}, p{"p", plain(share_words(scope, found.chance))};
  const InlineFill samples{"samples", plain(std::to_string(unseen::samples_drawn))}, least{"least", plain(percent(scope, rule.significance))};
  return found.poor ? scope.tell_computed("unseen.fit-poor", {a2, p, samples, least}) : scope.tell_computed("unseen.fit", {a2, p, samples, least});
}

/// The deepest that was seen, beside the deepest to expect.
Sentence seen(const Scope &scope, const unseen::PitDepths &pits, double level) {
  const Inlines deepest = plain(unit_mm(scope, base::mm_exact(pits.deepest_seen)));
  const Sentence text = mm_of(pits.deepest_seen) > level ? scope.tell_computed("unseen.seen-deeper", {{"seen", deepest}})
                                                         : scope.tell_computed("unseen.seen", {{"seen", deepest}});
  const auto *pit = survey::pit_of(scope.survey(), pits.deeper_pit);
  if (!pit) return text;
  return text + scope.tell_computed("unseen.deeper-pit", {{"pit", link(pit_id(pit->id), pit->id)}, {"depth", plain(unit_mm(scope, in_mm(pit->depth)))}});
}

Sentence expectation(const Scope &scope, const survey::Zone &zone, const unseen::PitDepths &pits) {
  const auto &found = *pits.expected;
  const Inlines confidence = plain(percent(scope, scope.policy().unseen.confidence));
  std::optional<Sentence> text = scope.tell_computed(
      "unseen.expect", {{"area", plain(figure(*zone.area_m2))}, {"level", content::strong(unit_mm(scope, mm_near(found.level)))},
                        {"low", plain(mm_down(found.low))}, {"high", plain(unit_mm(scope, mm_up(found.high)))}, {"confidence", confidence}});
  add_sentence(text, seen(scope, pits, found.level));
  add_sentence(text, scope.tell_computed("unseen.chance", {{"chance", plain(share_words(scope, found.chance_deeper))}, {"confidence", confidence},
                                                           {"within", plain(unit_mm(scope, mm_up(found.within)))}}));
  add_sentence(text, beside(scope, zone.id, found, base::in_millimetres(pits.deepest_seen)));
  return *text;
}

/// Zones with pits of which no blocks were looked over.
std::optional<Sentence> without_blocks(const Scope &scope) {
  std::vector<std::string> names;
  for (const auto &zone : scope.assessment().zones)
    if (zone.worst_pit && !survey::zone_of(scope.survey(), zone.zone)->pit_blocks) names.push_back(zone_name(scope, zone.zone));
  if (names.empty()) return std::nullopt;
  return scope.tell_computed("unseen.no-blocks", {{"zones", plain(join_and(scope, names))}});
}

std::vector<content::Block> zone_pits(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const unseen::PitDepths &pits) {
  const std::string source = scope.policy().unseen.source;
  std::vector<content::Block> out = {item_heading(scope.say("unseen.zone-title", {{"zone", zone.name.text}}), "deepest/" + zone.id)};
  if (!pits.expected) {
    out.push_back(statement(scope, Rests::measured, {paragraph(blocks_line(scope, *zone.pit_blocks), look::text)}, {}));
    out.push_back(computed(scope, refused(scope, pits), source));
    return out;
  }
  out.push_back(computed(scope, expectation(scope, zone, pits), source, label_link("table/deepest/" + zone.id)));
  out.push_back(computed(scope, fit_sentence(scope, *pits.expected) + scope.tell_computed("unseen.assumes"), scope.say("unseen.fit-rule"),
                         label_link("figure/deepest-" + zone.id)));
  out.push_back(law_table(scope, numbering, zone, *pits.expected));
  out.push_back(maxima_figure(scope, numbering, zone, *pits.expected));
  return out;
}

} // namespace

std::string mm_near(double mm) { return rounded(mm, mm_places); }
std::string mm_up(double mm) { return rounded(std::ceil(mm * hundredths) / hundredths, mm_places); }
std::string mm_down(double mm) { return rounded(std::floor(mm * hundredths) / hundredths, mm_places); }

std::vector<content::Block> pits_to_expect(const Scope &scope, Numbering &numbering) {
  std::vector<content::Block> out;
  for (std::size_t i = 0; i < scope.survey().zones.size(); ++i)
    if (const auto &pits = scope.outlook().unseen.zones[i].pits)
      append(out, zone_pits(scope, numbering, scope.survey().zones[i], *pits));
  if (const auto text = without_blocks(scope)) out.push_back(computed(scope, *text, scope.policy().unseen.source));
  return out;
}

} // namespace strakebook::compose
