#include "strakebook/compose/statements.h"

#include "strakebook/compose/looks.h"

namespace strakebook::compose {

using content::operator+;

Rests rests_on(survey::StatementKind kind) {
  switch (kind) {
  case survey::StatementKind::measured:
    return Rests::measured;
  case survey::StatementKind::seen:
    return Rests::seen;
  case survey::StatementKind::told:
    return Rests::told;
  case survey::StatementKind::inferred:
    return Rests::inferred;
  case survey::StatementKind::opinion:
    return Rests::opinion;
  }
  return Rests::opinion;
}

std::string statement_meaning(Rests rests) {
  switch (rests) {
  case Rests::measured:
    return "measured";
  case Rests::seen:
    return "seen";
  case Rests::told:
    return "told";
  case Rests::inferred:
    return "inferred";
  case Rests::computed:
    return "computed";
  case Rests::opinion:
    return "opinion";
  }
  return {};
}

std::string statement_word(const Scope &scope, Rests rests) {
  switch (rests) {
  case Rests::measured:
    return scope.say("statement.measured");
  case Rests::seen:
    return scope.say("statement.seen");
  case Rests::told:
    return scope.say("statement.told");
  case Rests::inferred:
    return scope.say("statement.inferred");
  case Rests::computed:
    return scope.say("statement.computed");
  case Rests::opinion:
    return scope.say("statement.opinion");
  }
  return {};
}

content::Block type_and_evidence(const Scope &scope, Rests rests, Inlines evidence) {
  const std::string word = statement_word(scope, rests);
  Inlines text = {content::Sign{statement_meaning(rests), {}}};
  text = std::move(text) + (rests == Rests::opinion ? content::italic(word) : content::strong(word));
  if (!evidence.empty()) {
    text.emplace_back(content::LineBreak{});
    text = text + std::move(evidence);
  }
  return paragraph(std::move(text), look::side);
}

content::Block beside(std::vector<content::Block> left, std::vector<content::Block> right) {
  return block(content::Columns{look::text_side, {std::move(left), std::move(right)}});
}

content::Block statement(const Scope &scope, Rests rests, std::vector<content::Block> left,
                         Inlines evidence) {
  return beside(std::move(left), {type_and_evidence(scope, rests, std::move(evidence))});
}

content::Block computed(const Scope &scope, const Sentence &sentence, std::string rule, Inlines where) {
  Inlines by = content::soft(std::move(rule));
  if (!where.empty())
    by = std::move(by) + content::soft(scope.say("voice.list-between")) + std::move(where);
  return statement(scope, Rests::computed, {paragraph(sentence.text(), look::text)}, std::move(by));
}

Inlines evidence_list(const Scope &scope, const std::vector<std::string> &evidence) {
  Inlines out;
  for (const auto &one : evidence) {
    if (!out.empty())
      out = std::move(out) + content::soft(scope.say("voice.list-between"));
    const Inlines named = prose(scope, one);
    const auto *reference = named.empty() ? nullptr : std::get_if<content::Reference>(&named.front());
    if (reference == nullptr) {
      out = std::move(out) + named;
      continue;
    }
    out.push_back(content::Reference{reference->target, content::Reference::Form::text_page, reference->shown,
                                     content::Emphasis::soft});
  }
  return out;
}

} // namespace strakebook::compose
