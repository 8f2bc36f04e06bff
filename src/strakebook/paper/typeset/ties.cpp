#include "strakebook/paper/typeset/ties.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

namespace strakebook::typeset {
namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
bool capital(char c) { return c >= 'A' && c <= 'Z'; }

bool listed(std::string_view word, const std::vector<std::string> &list) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

std::string_view without_opening(std::string_view word) {
  const auto from = word.find_first_not_of("([\"'");
  return from == std::string_view::npos ? std::string_view() : word.substr(from);
}

std::string_view without_closing(std::string_view word) {
  const auto last = word.find_last_not_of(".,;:)]!?\"'");
  return last == std::string_view::npos ? std::string_view() : word.substr(0, last + 1);
}

/// Ends in a figure: "2.7", "5.8/5.7", "(12", "1/2".
bool ends_in_figure(std::string_view word) {
  constexpr std::string_view vulgar[] = {"\xC2\xBC", "\xC2\xBD", "\xC2\xBE"};
  if (word.empty())
    return false;
  return digit(word.back()) || std::any_of(std::begin(vulgar), std::end(vulgar),
                                           [&](std::string_view one) { return word.ends_with(one); });
}

bool begins_with_figure(std::string_view word) {
  word = without_opening(word);
  constexpr std::string_view signs[] = {"-", "+", "\xE2\x88\x92", "\xC2\xB1"};
  for (const auto sign : signs)
    if (word.starts_with(sign))
      word.remove_prefix(sign.size());
  return !word.empty() && digit(word.front());
}

bool holds_figure(std::string_view word) { return std::any_of(word.begin(), word.end(), digit); }

bool is_day(std::string_view word) {
  word = without_opening(word);
  return !word.empty() && word.size() <= 2 && std::all_of(word.begin(), word.end(), digit);
}

bool is_code(std::string_view word, const style::Ties &ties) {
  word = without_opening(word);
  return word.size() >= 2 && word.size() <= static_cast<std::size_t>(ties.code_letters) &&
         std::all_of(word.begin(), word.end(), capital);
}

bool is_initial(std::string_view word) {
  word = without_opening(word);
  return word.size() == 2 && capital(word[0]) && word[1] == '.';
}

} // namespace

bool tied(const Before &before, std::string_view after, const style::Ties &ties) {
  const auto opened = without_opening(before.word);
  if (listed(before.word, ties.dashes) && before.earlier.empty())
    return true;
  if (listed(after, ties.dashes) || listed(opened, ties.arrows))
    return true;
  const auto closed = without_closing(after);
  if (ends_in_figure(before.word) && (listed(closed, ties.units) || is_fraction(closed)))
    return true;
  if (is_day(before.word) && listed(closed, ties.months))
    return true;
  if ((listed(opened, ties.leaders) && holds_figure(after)) ||
      (is_code(before.word, ties) && begins_with_figure(after)))
    return true;
  const bool name_follows = !after.empty() && capital(after.front());
  return name_follows && (is_initial(before.word) || listed(opened, ties.titles));
}

bool is_range(const Before &before, std::string_view after, const style::Ties &ties) {
  return listed(before.word, ties.ranges) && ends_in_figure(before.earlier) && begins_with_figure(after);
}

bool is_fraction(std::string_view word) {
  const auto slash = word.find('/');
  if (slash == std::string_view::npos || slash == 0)
    return false;
  const auto below = word.substr(slash + 1);
  unsigned over = 0, under = 0;
  const auto above_end = std::from_chars(word.data(), word.data() + slash, over);
  const auto below_end = std::from_chars(below.data(), below.data() + below.size(), under);
  const bool whole = above_end.ptr == word.data() + slash && below_end.ptr == below.data() + below.size() &&
                     above_end.ec == std::errc() && below_end.ec == std::errc();
  return whole && over > 0 && over < under && under <= 64 && (under & (under - 1)) == 0;
}

} // namespace strakebook::typeset
