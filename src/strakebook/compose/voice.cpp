#include "strakebook/compose/voice.h"

#include <stdexcept>

namespace strakebook::compose {

namespace {

using content::Emphasis;

const Inlines &value_of(std::string_view name, std::initializer_list<InlineFill> fills) {
  for (const auto &fill : fills)
    if (fill.name == name)
      return fill.value;
  throw std::invalid_argument("nothing fills {" + std::string(name) + "}");
}

void flush(std::string &run, Emphasis emphasis, Inlines &out) {
  if (run.empty())
    return;
  out.push_back(content::Text{run, emphasis});
  run.clear();
}

Emphasis toggled(Emphasis now, Emphasis mark) { return now == mark ? Emphasis::plain : mark; }

} // namespace

std::string Scope::say(std::string_view key, std::initializer_list<base::Fill> fills) const {
  return base::filled(house::word(wording(), key), std::span(fills.begin(), fills.size()));
}

Inlines Scope::tell(std::string_view key, std::initializer_list<InlineFill> fills) const {
  const std::string &pattern = house::word(wording(), key);
  Inlines out;
  std::string run;
  Emphasis emphasis = Emphasis::plain;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const char c = pattern[i];
    if (c == '*' || c == '_') {
      flush(run, emphasis, out);
      emphasis = toggled(emphasis, c == '*' ? Emphasis::strong : Emphasis::italic);
    } else if (c == '{') {
      const auto end = pattern.find('}', i);
      if (end == std::string::npos)
        throw std::invalid_argument("a brace is not closed in " + std::string(key));
      flush(run, emphasis, out);
      const auto &value = value_of(std::string_view(pattern).substr(i + 1, end - i - 1), fills);
      out.insert(out.end(), value.begin(), value.end());
      i = end;
    } else {
      run += c;
    }
  }
  flush(run, emphasis, out);
  return out;
}

std::string Scope::say_computed(std::string_view key, std::initializer_list<base::Fill> fills) const {
  return base::filled(house::word(wording(), key), std::span(fills.begin(), fills.size()));
}

Sentence Scope::tell_computed(std::string_view key, std::initializer_list<InlineFill> fills) const {
  return Sentence(tell(key, fills));
}

Sentence Sentence::operator+(const Sentence &next) const {
  using content::operator+;
  return Sentence(text_ + content::plain(" ") + next.text_);
}

std::string next_head(const Scope &scope, Numbering &numbering) {
  return scope.number + "." + std::to_string(++numbering.heads);
}

std::string next_table(const Scope &scope, Numbering &numbering) {
  return scope.say("voice.table", {{"n", scope.number + "." + std::to_string(++numbering.tables)}});
}

std::string next_figure(const Scope &scope, Numbering &numbering) {
  return scope.say("voice.figure", {{"n", scope.number + "." + std::to_string(++numbering.figures)}});
}

void add_sentence(std::optional<Sentence> &text, const std::optional<Sentence> &next) {
  if (next)
    text = text ? *text + *next : *next;
}

} // namespace strakebook::compose
