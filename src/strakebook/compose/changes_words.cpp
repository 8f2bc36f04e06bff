#include <algorithm>

#include "strakebook/compose/changes_parts.h"
#include "strakebook/steel/amend/decides.h"

/// How changes are counted and how two texts are held against each other.
namespace strakebook::compose {

using amend::How;
using amend::Kind;
using content::plain;
using content::operator+;

namespace {

// Texts of no more words are shown whole; of longer ones what differs is shown with so many words on either side of it.
constexpr std::size_t whole_text = 12, words_about = 4;
// The most characters that a column of figures has room for.
constexpr std::size_t figure_length = 14;

std::string number_words(const Scope &scope, std::size_t n) {
  switch (n) {
  case 2: return scope.say("changes.two");
  case 3: return scope.say("changes.three");
  case 4: return scope.say("changes.four");
  case 5: return scope.say("changes.five");
  case 6: return scope.say("changes.six");
  case 7: return scope.say("changes.seven");
  case 8: return scope.say("changes.eight");
  case 9: return scope.say("changes.nine");
  default: return std::to_string(n);
  }
}

std::size_t count(const amend::Changes &changes, Kind kind, std::optional<How> how = {}) {
  return static_cast<std::size_t>(std::ranges::count_if(
      changes.all, [&](const amend::Change &one) {
        return one.kind == kind && (!how || one.how == *how) && (kind > Kind::answer || amend::decides(one));
      }));
}

/// "two readings and one pit", and whether that is one thing.
struct Counted {
  std::string words;
  bool single = false;
};

std::optional<Counted> counted_steel(const Scope &scope, const amend::Changes &changes, How how) {
  const std::size_t marks = count(changes, Kind::reading, how), pits = count(changes, Kind::pit, how);
  std::vector<std::string> parts;
  if (marks > 0)
    parts.push_back(marks == 1 ? scope.say_computed("changes.reading") : scope.say_computed("changes.readings", {{"n", number_words(scope, marks)}}));
  if (pits > 0)
    parts.push_back(pits == 1 ? scope.say_computed("changes.pit") : scope.say_computed("changes.pits", {{"n", number_words(scope, pits)}}));
  if (parts.empty())
    return std::nullopt;
  return Counted{capitalised(join_and(scope, parts)), marks + pits == 1};
}

Sentence decisions_counted(const Scope &scope, const amend::Changes &changes) {
  std::vector<std::string> parts;
  const std::size_t decisions = count(changes, Kind::decision), items = count(changes, Kind::recommendation);
  if (decisions > 0)
    parts.push_back(decisions == 1 ? scope.say_computed("changes.decision")
                                   : scope.say_computed("changes.decisions-n", {{"n", number_words(scope, decisions)}}));
  if (items > 0)
    parts.push_back(items == 1 ? scope.say_computed("changes.item") : scope.say_computed("changes.items", {{"n", number_words(scope, items)}}));
  if (count(changes, Kind::answer) > 0)
    parts.push_back(scope.say_computed("changes.answer"));
  if (parts.empty())
    return scope.tell_computed("changes.no-decision");
  return scope.tell_computed("changes.changed", {{"what", plain(capitalised(join_and(scope, parts)))}});
}

std::optional<Sentence> corrected(const Scope &scope, const amend::Changes &changes) {
  const auto what = counted_steel(scope, changes, How::changed);
  if (!what)
    return std::nullopt;
  const InlineFill fill{"what", plain(what->words)};
  return what->single ? scope.tell_computed("changes.corrected-one", {fill}) : scope.tell_computed("changes.corrected", {fill});
}

std::optional<Sentence> withdrawn(const Scope &scope, const amend::Changes &changes) {
  const auto what = counted_steel(scope, changes, How::withdrawn);
  if (!what)
    return std::nullopt;
  const InlineFill fill{"what", plain(what->words)};
  return what->single ? scope.tell_computed("changes.withdrawn-one", {fill}) : scope.tell_computed("changes.withdrawn", {fill});
}

std::optional<Sentence> added(const Scope &scope, const amend::Changes &changes) {
  const auto what = counted_steel(scope, changes, How::added);
  if (!what)
    return std::nullopt;
  const InlineFill fill{"what", plain(what->words)};
  return what->single ? scope.tell_computed("changes.added-one", {fill}) : scope.tell_computed("changes.added", {fill});
}

std::optional<Sentence> others(const Scope &scope, const amend::Changes &changes) {
  const auto n = static_cast<std::size_t>(
      std::ranges::count_if(changes.all, [](const amend::Change &one) { return !amend::decides(one) && !is_measured(one.kind); }));
  if (n == 0)
    return std::nullopt;
  return n == 1 ? scope.tell_computed("changes.other")
                : scope.tell_computed("changes.others", {{"n", plain(capitalised(number_words(scope, n)))}});
}

std::string words_between(const std::vector<std::string> &words, std::size_t from, std::size_t to) {
  std::string out = from > 0 ? "… " : "";
  for (std::size_t i = from; i < to; ++i)
    out += (i > from ? " " : "") + words[i];
  return to < words.size() ? out + " …" : out;
}

std::vector<std::string> words_of(const std::string &text) {
  std::vector<std::string> out;
  for (const auto word : base::words(text))
    out.emplace_back(word);
  return out;
}

} // namespace

Sentence counted_changes(const Editions &both) {
  const auto &changes = both.amended.changes;
  if (changes.all.empty())
    return both.now.tell_computed("changes.nothing");
  std::optional<Sentence> out = decisions_counted(both.now, changes);
  add_sentence(out, corrected(both.now, changes));
  add_sentence(out, withdrawn(both.now, changes));
  add_sentence(out, added(both.now, changes));
  add_sentence(out, others(both.now, changes));
  return *out;
}

Shown shown_difference(const Scope &scope, const std::string &before, const std::string &now) {
  const auto old_words = words_of(before), new_words = words_of(now);
  const auto dash_or = [&](std::string text, Inlines (*form)(std::string)) {
    return text.empty() ? content::soft(scope.say("voice.dash")) : form(std::move(text));
  };
  const std::size_t shorter = std::min(old_words.size(), new_words.size());
  std::size_t head = 0, tail = 0;
  if (std::max(old_words.size(), new_words.size()) > whole_text && shorter > 0) {
    while (head < shorter && old_words[head] == new_words[head])
      ++head;
    while (tail < shorter - head && old_words[old_words.size() - 1 - tail] == new_words[new_words.size() - 1 - tail])
      ++tail;
  }
  head = head > words_about ? head - words_about : 0;
  tail = tail > words_about ? tail - words_about : 0;
  return {dash_or(words_between(old_words, head, old_words.size() - tail), content::struck),
          dash_or(words_between(new_words, head, new_words.size() - tail), content::strong)};
}

std::string field_words(std::string key) {
  std::ranges::replace(key, '-', ' ');
  return key;
}

bool is_figure(const amend::Difference &difference) {
  return std::max(difference.before.size(), difference.after.size()) <= figure_length;
}

std::string said_head(const Editions &both) {
  return both.now.say("changes.said", {{"issue", std::to_string(both.amended.replaces.issue)}});
}
std::string says_head(const Editions &both) { return both.now.say("changes.says", {{"issue", std::to_string(both.issue)}}); }
std::string was_head(const Editions &both) {
  return both.now.say("changes.issue", {{"issue", std::to_string(both.amended.replaces.issue)}});
}
std::string is_head(const Editions &both) { return both.now.say("changes.issue", {{"issue", std::to_string(both.issue)}}); }

} // namespace strakebook::compose
