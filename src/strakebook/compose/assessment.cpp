#include "strakebook/compose/chapters.h"
#include "strakebook/compose/decision.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/map_parts.h"
#include "strakebook/compose/robustness.h"
#include "strakebook/compose/subjects.h"

/// Assessment and decisions: one page a zone, every claim with what it rests on.
namespace strakebook::compose {

using content::plain;

namespace {

std::string title(const Scope &scope, const Judged &judged) {
  const std::string &zone = judged.zone.name.text;
  if (judged.decision == nullptr)
    return scope.say("assessment.title-open", {{"zone", zone}});
  return scope.say("assessment.title",
                   {{"zone", zone}, {"action", action_name(scope, judged.decision->action)}});
}

std::vector<content::Block> page(const Scope &scope, Numbering &numbering, const Judged &judged) {
  std::vector<content::Block> out = {
      sub_heading(scope, numbering, title(scope, judged), zone_id(judged.zone.id))};
  std::get<content::Heading>(out.front().what).text_style = look::decision_head;
  out.push_back(zone_line(scope, judged));
  append(out, claim(scope, judged));
  if (auto map = zone_map(scope, numbering, judged.zone)) out.push_back(std::move(*map));
  append(out, facts(scope, judged));
  append(out, criteria_at_worst(scope, numbering, judged));
  append(out, robustness_of(scope, numbering, judged));
  append(out, conflict_answer(scope, judged));
  append(out, reasons(scope, judged));
  append(out, extent_and_ladder(scope, judged));
  append(out, alternatives(scope, judged));
  append(out, range_of_opinion(scope, judged));
  return out;
}

} // namespace

content::Section assessment(const Scope &scope) {
  auto out = section_of(scope);
  out.blocks.push_back(paragraph(scope.tell("assessment.margin-words"), look::lead));
  if (scope.survey().report.state == survey::State::preliminary) {
    out.blocks.push_back(paragraph(plain(scope.say("assessment.preliminary")), look::text));
    return out;
  }
  Numbering numbering;
  for (const auto &zone : scope.survey().zones)
    append(out.blocks,
           page(scope, numbering,
                {zone, assess::zone_result(scope.assessment(), zone.id), decision_for(scope, zone.id)}));
  return out;
}

} // namespace strakebook::compose
