#include "strakebook/compose/decision.h"
#include "strakebook/compose/keys.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/statements.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/wastage.h"

/// What the surveyor makes of it: the reason, the firm's ladder beside the decision, the other tenable views.
namespace strakebook::compose {

using content::Block;
using content::plain;
using content::operator+;

namespace {

std::optional<Block> activity_and_cause(const Scope &scope, const survey::Decision &decision) {
  Entries entries;
  add_if_given(scope, entries, scope.say("assessment.activity"), decision.activity);
  add_if_given(scope, entries, scope.say("assessment.cause"), decision.cause);
  if (entries.empty())
    return std::nullopt;
  return statement(scope, Rests::opinion, {keys(std::move(entries), look::plain_keys)}, {});
}

Block extent(const Scope &scope, const Judged &judged) {
  std::optional<Sentence> text = extent_sentence(scope, judged.zone, judged.result);
  add_sentence(text, pitting_sentences(scope, judged.zone, judged.result));
  return computed(scope, *text, scope.say("pitting.rule-named"), page_link("appendix/rules"));
}

Inlines followed(const Scope &scope, const Judged &judged) {
  if (judged.decision == nullptr)
    return not_given(scope);
  const base::Fill action{"action", action_name(scope, judged.decision->action)};
  if (!judged.result.departs)
    return plain(scope.say("ladder.followed", {action}));
  return plain(scope.say("ladder.departs", {action})) + plain(" ") +
         answer_to(scope, judged.decision->departure);
}

/// The row is the firm's, quoted in its words; only whether the decision follows it is said beside it.
Block ladder(const Scope &scope, const Judged &judged) {
  const auto words = ladder_words(scope, judged.result);
  Inlines row = words ? scope.tell("ladder.quoted", {{"when", plain(words->when)},
                                                     {"suggests", content::italic(words->suggests)}})
                      : not_given(scope);
  Inlines side = content::soft(scope.say("ladder.source", {{"source", scope.policy().ladder.source}}) + " ") + label_link("table/ladder");
  return beside({paragraph(row + plain(" ") + followed(scope, judged), look::text)},
                {paragraph(std::move(side), look::side)});
}

} // namespace

std::vector<Block> reasons(const Scope &scope, const Judged &judged) {
  if (judged.decision == nullptr)
    return {};
  const auto &decision = *judged.decision;
  std::vector<Block> out = {item_heading(scope.say("assessment.why"))};
  out.push_back(statement(scope, Rests::opinion, paragraphs(scope, decision.why, look::text),
                          evidence_list(scope, decision.evidence)));
  if (judged.result.too_few && decision.opinion_on_few.given())
    out.push_back(statement(scope, Rests::opinion, paragraphs(scope, decision.opinion_on_few, look::text),
                            plain(scope.say("assessment.on-few"))));
  if (auto more = activity_and_cause(scope, decision))
    out.push_back(std::move(*more));
  return out;
}

std::vector<Block> extent_and_ladder(const Scope &scope, const Judged &judged) {
  std::vector<Block> out = {item_heading(scope.say("assessment.extent-head"))};
  if (judged.result.extent != assess::Extent::none)
    out.push_back(extent(scope, judged));
  out.push_back(ladder(scope, judged));
  return out;
}

std::vector<Block> alternatives(const Scope &scope, const Judged &judged) {
  if (judged.decision == nullptr || judged.decision->instead_of.empty())
    return {};
  std::vector<Block> left;
  for (const auto &other : judged.decision->instead_of)
    left.push_back(
        block(content::Paragraph{scope.tell("assessment.instead",
                                            {{"action", content::italic(action_name(scope, other.name))},
                                             {"why", prose(scope, other.words.text)}}),
                                 look::text,
                                 {}},
              {}, other.words.span));
  return {item_heading(scope.say("assessment.alternatives")),
          statement(scope, Rests::opinion, std::move(left), {})};
}

std::vector<Block> range_of_opinion(const Scope &scope, const Judged &judged) {
  if (judged.decision == nullptr)
    return {};
  const auto &decision = *judged.decision;
  const Inlines others =
      scope.tell("assessment.others-say", {{"words", answer_to(scope, decision.range_of_opinion)}});
  const Inlines change =
      scope.tell("assessment.would-change", {{"words", answer_to(scope, decision.would_change)}});
  return {item_heading(scope.say("assessment.range")),
          statement(scope, Rests::opinion, {paragraph(others + plain(" ") + change, look::text)}, {})};
}

} // namespace strakebook::compose
