#pragma once

#include <string_view>

#include "strakebook/paper/style/setting.h"

namespace strakebook::typeset {

/// What stands before a blank: the word, and the word before that one; empty at the beginning of a text.
struct Before {
  std::string_view word, earlier;
};

/// Whether the line may not end at the blank between `before.word` and `after`: figure and unit, "p." and its
/// number, a code and its figure, day and month, initials and name, an arrow and its target; nothing stands
/// after a dash that opens a text, and no line begins with a dash.
bool tied(const Before &before, std::string_view after, const style::Ties &ties);

/// Whether `before.earlier`, `before.word` and `after` are a range ("5.8 to 5.9"): both blanks are tied.
bool is_range(const Before &before, std::string_view after, const style::Ties &ties);

/// Whether a word is a fraction of a unit that follows it: "3/16", the lower figure a power of two. Common
/// practice, no source: rules are divided so.
bool is_fraction(std::string_view word);

} // namespace strakebook::typeset
