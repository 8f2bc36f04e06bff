#include <algorithm>

#include "strakebook/compose/chapters.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/unseen.h"
#include "strakebook/steel/survey/pit_blocks.h"

/// Results by zone: profiles, every mark, zones and rows in figures, pits, criteria, doublers, notes and what was looked for and not found.
namespace strakebook::compose {

using content::plain;

namespace {

/// "153 marks were planned: 141 read, 1 rejected, 11 not read." with its words by status.
Inlines coverage(const Scope &scope) {
  const auto &count = scope.assessment().coverage;
  std::vector<std::string> reasons;
  for (const auto &[status, number] : count.not_read)
    reasons.push_back(scope.say("results.reason", {{"n", std::to_string(number)}, {"status", status_word(scope, status)}}));
  const base::Fill planned{"planned", std::to_string(count.planned)}, read{"read", std::to_string(count.read)};
  const base::Fill rejected{"rejected", std::to_string(count.rejected)}, unread{"unread", std::to_string(not_read(count))};
  const base::Fill used{"used", std::to_string(count.used)}, doubler{"doubler", std::to_string(count.doubler)};
  std::string text = scope.say_computed("results.coverage", {planned, read, rejected, unread, used, doubler});
  if (!reasons.empty()) text += " " + scope.say_computed("results.reasons", {{"reasons", join_and(scope, reasons)}});
  if (scope.assessment().spot_check) text += " " + scope.say_computed("results.spot-check");
  return plain(text);
}

/// Where no pit is listed.
std::string no_pits(const Scope &scope) {
  const bool in_blocks = std::ranges::any_of(scope.survey().zones, survey::pits_in_blocks);
  return in_blocks ? scope.say("unseen.only-in-blocks") : scope.say("results.no-pits");
}

} // namespace

content::Section results(const Scope &scope) {
  auto out = section_of(scope);
  Numbering numbering;
  out.blocks.push_back(paragraph(coverage(scope), look::lead));
  out.blocks.push_back(sub_heading(scope, numbering, scope.say("results.profiles")));
  out.blocks.push_back(profiles_figure(scope, numbering));
  out.blocks.push_back(sub_heading(scope, numbering, scope.say("results.readings")));
  out.blocks.push_back(readings_table(scope, numbering));
  out.blocks.push_back(zones_table(scope, numbering));
  out.blocks.push_back(rows_table(scope, numbering));
  append(out.blocks, between_the_marks(scope, numbering));
  out.blocks.push_back(sub_heading(scope, numbering, scope.say("results.pits-and-criteria")));
  if (scope.survey().pits.empty())
    out.blocks.push_back(paragraph(plain(no_pits(scope)), look::text));
  else
    out.blocks.push_back(pits_table(scope, numbering));
  out.blocks.push_back(matrix_table(scope, numbering));
  if (!scope.survey().doublers.empty()) append(out.blocks, doublers(scope, numbering));
  append(out.blocks, notes_and_none_found(scope, numbering));
  return out;
}

} // namespace strakebook::compose
