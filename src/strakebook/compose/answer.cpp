#include <algorithm>

#include "strakebook/compose/answer_parts.h"
#include "strakebook/compose/chapters.h"
#include "strakebook/compose/figures.h"
#include "strakebook/compose/issue_words.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/rate_words.h"

/// Page one: what an underwriter reads in three minutes.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

Inlines vessel_line(const Scope &scope) {
  const auto &vessel = scope.survey().vessel;
  std::vector<std::string> parts;
  if (vessel.kind.given())
    parts.push_back(capitalised(vessel.kind.text));
  parts.push_back(scope.say("answer.size", {{"length", as_written(vessel.length.length)},
                                            {"beam", as_written(vessel.beam.length)}}));
  if (vessel.built)
    parts.push_back(scope.say("answer.built", {{"built", vessel.built->text.text},
                                               {"from", origin_words(scope, vessel.built->from)}}));
  return plain(base::joined(parts, scope.say("voice.list-between")) + scope.say("voice.stop"));
}

Inlines survey_line(const Scope &scope) {
  const auto &s = scope.survey();
  return scope.tell(
      "answer.surveyed",
      {{"held", answer_to(scope, s.conditions.how_held)},
       {"place", answer_to(scope, s.report.place)},
       {"date", s.report.inspected ? plain(date(scope, s.report.inspected->value)) : not_given(scope)}});
}

Inlines purpose_line(const Scope &scope) {
  const auto &s = scope.survey();
  return scope.tell("answer.for", {{"client", answer_to(scope, s.instructions.client)},
                                   {"purpose", answer_to(scope, s.instructions.purpose)},
                                   {"surveyor", answer_to(scope, s.surveyor.name)},
                                   {"qualification", answer_to(scope, s.surveyor.qualification)},
                                   {"page", page_link("signature")}});
}

/// The vessel's name over her particulars. Which issue this one replaces stands beside the name, where it takes no room from the answer.
std::vector<Block> title(const Scope &scope) {
  Block name = paragraph(plain(scope.survey().vessel.name.text), look::vessel_name);
  Block left = paragraph(vessel_line(scope) + survey_line(scope), look::title_facts);
  Block right = paragraph(purpose_line(scope), look::title_facts);
  if (auto notice = replaces_notice(scope))
    return {block(content::Columns{look::particulars,
                                   {{std::move(name), std::move(left)}, {block(content::Rule{look::rule}), std::move(*notice), std::move(right)}}})};
  return {std::move(name), block(content::Columns{look::particulars, {{std::move(left)}, {std::move(right)}}})};
}

std::string refloat_word(const Scope &scope, const survey::Words &advice) {
  if (advice.text == "yes")
    return scope.say("refloat.yes");
  if (advice.text == "with conditions")
    return scope.say("refloat.with-conditions");
  if (advice.text == "no")
    return scope.say("refloat.no");
  if (advice.text == "not applicable")
    return scope.say("refloat.not-applicable");
  return scope.say("refloat.no-opinion");
}

/// Where no opinion is given, and how much of the shell was read at all; nothing where every zone was read and judged.
Inlines not_judged(const Scope &scope) {
  std::vector<std::string> zones;
  for (const auto &decision : scope.survey().decisions)
    if (decision.action == policy::no_opinion)
      zones.push_back(zone_name(scope, decision.zone));
  Inlines out;
  if (!zones.empty())
    out = plain(" ") + content::strong(scope.say("answer.no-opinion", {{"zones", join_and(scope, zones)}}));
  const auto &read = scope.assessment().read_m2, &shell = scope.assessment().shell_m2;
  if (!read || *read == *shell)
    return out;
  const auto m2 = [](Ratio area) { return base::to_text(base::round_to(area, 1)); };
  const Ratio share = base::reduced({read->num * shell->den, read->den * shell->num});
  return out + plain(" " + scope.say_computed("answer.read-area", {{"read", m2(*read)}, {"shell", m2(*shell)},
                                                                   {"share", percent(scope, share)}}));
}

std::vector<Block> refloat(const Scope &scope) {
  const auto &answer = scope.survey().answer;
  std::vector<Block> out = {eyebrow(scope.say("answer.refloat"))};
  out.push_back(paragraph(
      answer.refloat.given() ? plain(refloat_word(scope, answer.refloat)) : not_given(scope), look::advice));
  if (answer.refloat_conditions.given())
    append(out, paragraphs(scope, answer.refloat_conditions, look::answer));
  const auto &conditions = scope.survey().conditions;
  Inlines water = scope.tell(
      "answer.out-of-water",
      {{"out", conditions.out_of_water ? plain(conditions.out_of_water->value ? scope.say("answer.out")
                                                                              : scope.say("answer.afloat"))
                                       : not_given(scope)},
       {"cleaned", conditions.cleaned ? plain(conditions.cleaned->value ? scope.say("answer.cleaned")
                                                                        : scope.say("answer.not-cleaned"))
                                      : not_given(scope)}});
  out.push_back(paragraph(std::move(water) + not_judged(scope), look::answer));
  return out;
}

std::vector<Block> why(const Scope &scope) {
  std::vector<Block> out = {eyebrow(scope.say("answer.why"))};
  append(out, paragraphs(scope, scope.survey().answer.reason, look::text));
  if (const auto nearest = nearest_in_time(scope))
    out.push_back(paragraph(nearest->text(), look::answer));
  return out;
}

std::vector<Block> limitation_and_next(const Scope &scope) {
  const auto &answer = scope.survey().answer;
  std::vector<Block> out = {eyebrow(scope.say("answer.limitation"))};
  const auto &all = scope.survey().limitations;
  const auto found = std::ranges::find(all, answer.limitation.text, &survey::Limitation::id);
  if (found == all.end())
    out.push_back(paragraph(answer_to(scope, answer.limitation), look::side));
  else
    out.push_back(
        paragraph(scope.tell("answer.limitation-text", {{"area", prose(scope, capitalised(found->area.text))},
                                                        {"why", answer_to(scope, found->why)},
                                                        {"prevents", answer_to(scope, found->prevents)},
                                                        {"cure", answer_to(scope, found->cure)},
                                                        {"page", page_link(limitation_id(found->id))}}),
                  look::side));
  out.push_back(eyebrow(scope.say("answer.next")));
  Inlines next = answer_to(scope, answer.next_survey);
  if (answer.next_survey_by)
    next = scope.tell("answer.next-by", {{"date", content::strong(date(scope, answer.next_survey_by->value))},
                                         {"words", next}});
  out.push_back(paragraph(std::move(next), look::side));
  if (const auto reached = limit_before_next(scope))
    out.push_back(paragraph(reached->text(), look::side));
  return out;
}

} // namespace

content::Section answer(const Scope &scope) {
  auto out = section_of(scope);
  std::get<content::Heading>(out.blocks.front().what).text_style = look::eyebrow;
  auto &to = out.blocks;
  append(to, title(scope));
  to.push_back(block(content::Rule{look::rule_title}));
  auto left = refloat(scope);
  append(left, worst_remaining(scope));
  append(left, worst_loss(scope));
  to.push_back(block(content::Columns{look::answer_grid, {std::move(left), section_and_zones(scope)}}));
  to.push_back(block(content::Rule{look::rule}));
  to.push_back(block(content::Columns{look::text_side, {why(scope), limitation_and_next(scope)}}));
  append(to, items(scope));
  to.push_back(counts(scope));
  if (!scope.survey().recommendations.empty()) {
    to.push_back(eyebrow(scope.say("answer.where-items")));
    content::Figure figure{
        .label = {}, .caption = {}, .caption_above = false, .panels = {}, .lattice = {}, .notes = {}};
    figure.panels.push_back({{}, {}, item_strips(scope), "figure/items"});
    to.push_back(block(std::move(figure)));
  }
  return out;
}

} // namespace strakebook::compose
