#include "strakebook/compose/keys.h"

namespace strakebook::compose {

void add(Entries &entries, std::string label, Inlines value) {
  entries.push_back({std::move(label), std::move(value), {}});
}

void add_answer(const Scope &scope, Entries &entries, std::string label, const survey::Words &words) {
  add(entries, std::move(label), answer_to(scope, words));
}

void add_if_given(const Scope &scope, Entries &entries, std::string label, const survey::Words &words) {
  if (words.given())
    add(entries, std::move(label), prose(scope, words.text));
}

void add_date(const Scope &scope, Entries &entries, std::string label,
              const survey::Given<base::Date> &given) {
  add(entries, std::move(label), given ? content::plain(date(scope, given->value)) : not_given(scope));
}

void add_length(const Scope &scope, Entries &entries, std::string label, const survey::LengthFact &fact) {
  add(entries, std::move(label),
      scope.tell("voice.fact", {{"value", content::plain(as_written(fact.length))},
                                {"from", content::soft(origin_words(scope, fact.from))}}));
}

content::Block keys(Entries entries, std::string style, int columns) {
  return block(content::KeyValues{std::move(entries), std::move(style), columns});
}

std::string yes_no(const Scope &scope, bool value) {
  return value ? scope.say("voice.yes") : scope.say("voice.no");
}

} // namespace strakebook::compose
