#include "strakebook/paper/typeset/word_parts.h"

#include <algorithm>

#include "strakebook/base/text.h"

namespace strakebook::typeset {
namespace {

constexpr std::string_view soft_hyphen = "\xC2\xAD";
constexpr std::string_view quotes_and_dashes = "\xE2\x80"; // U+2010 to U+203F in three bytes

bool small(char c) { return c >= 'a' && c <= 'z'; }
bool ascii_letter(char c) { return small(c) || (c >= 'A' && c <= 'Z'); }
bool hexadecimal(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); }

// Every byte of a character beyond ASCII counts as a letter: dashes and blanks are looked for before this is
// asked.
bool letter(char c) { return ascii_letter(c) || static_cast<unsigned char>(c) >= 0x80; }

/// U+00BC to U+00BE: figures, though their bytes look like letters.
bool vulgar_fraction_at(std::string_view word, std::size_t i) {
  return word.size() >= i + 2 && word[i] == '\xC2' && word[i + 1] >= '\xBC' && word[i + 1] <= '\xBE';
}

/// Length in bytes of a hyphen or dash that a line may end after, at `i`; 0: none.
std::size_t hyphen_at(std::string_view word, std::size_t i) {
  if (word[i] == '-')
    return 1;
  const std::string_view three = word.substr(i, 3);
  return three == "\xE2\x80\x90" || three == "\xE2\x80\x93" || three == "\xE2\x80\x94" ? 3 : 0;
}

std::vector<std::size_t> after_hyphens(std::string_view word) {
  std::vector<std::size_t> breaks;
  std::size_t from = 0;
  for (std::size_t i = 0; i < word.size(); ++i) {
    const std::size_t length = hyphen_at(word, i);
    if (length == 0)
      continue;
    const std::size_t after = i + length;
    const bool figures = vulgar_fraction_at(word, after) || (i >= 2 && vulgar_fraction_at(word, i - 2));
    if (i > from && after < word.size() && letter(word[i - 1]) && letter(word[after]) && !figures) {
      breaks.push_back(after);
      from = after;
    }
    i = after - 1;
  }
  return breaks;
}

bool is_digest(std::string_view word) { return std::all_of(word.begin(), word.end(), hexadecimal); }

std::vector<std::size_t> in_long_word(std::string_view word, const style::LongWords &long_words) {
  std::vector<std::size_t> breaks;
  if (is_digest(word)) {
    const auto step = static_cast<std::size_t>(std::max(1, long_words.digits));
    for (std::size_t i = step; i < word.size(); i += step)
      breaks.push_back(i);
    return breaks;
  }
  for (std::size_t i = 1; i + 1 < word.size(); ++i)
    if (long_words.after.find(word[i - 1]) != std::string::npos &&
        long_words.after.find(word[i]) == std::string::npos)
      breaks.push_back(i);
  return breaks;
}

/// Small letters, those of Latin-1 and its extension too (two bytes from C3 9F to C5 BF: the capitals among the
/// latter are rare inside a word).
bool inside_word(std::string_view word, std::size_t i) {
  const auto byte = static_cast<unsigned char>(word[i]);
  if (byte < 0x80)
    return small(word[i]);
  if ((byte & 0xC0) == 0x80)
    return true;
  const bool small_latin_1 = byte == 0xC3 && i + 1 < word.size() && static_cast<unsigned char>(word[i + 1]) >= 0x9F;
  return small_latin_1 || byte == 0xC4 || byte == 0xC5;
}

/// Bytes of the mark at the beginning of `rest` that is no letter: 1, 3 for quotes and dashes, 0 for a letter.
std::size_t mark_at(std::string_view rest) {
  if (rest.empty())
    return 0;
  if (rest.size() >= 3 && rest.starts_with(quotes_and_dashes))
    return 3;
  return static_cast<unsigned char>(rest[0]) < 0x80 && !ascii_letter(rest[0]) ? 1 : 0;
}

} // namespace

std::vector<std::size_t> open_breaks(std::string_view word, const style::LongWords &long_words) {
  auto breaks = after_hyphens(word);
  if (breaks.empty() && long_words.from > 0 &&
      base::code_point_count(word) >= static_cast<std::size_t>(long_words.from))
    breaks = in_long_word(word, long_words);
  return breaks;
}

std::vector<std::size_t> take_soft_hyphens(std::string &word) {
  std::vector<std::size_t> places;
  for (auto at = word.find(soft_hyphen); at != std::string::npos; at = word.find(soft_hyphen, at)) {
    word.erase(at, soft_hyphen.size());
    if (at > 0 && at < word.size())
      places.push_back(at);
  }
  return places;
}

Letters dividable_letters(std::string_view word) {
  std::size_t begin = 0;
  while (const auto mark = mark_at(word.substr(begin)))
    begin += mark;
  std::size_t end = begin;
  while (end < word.size() && mark_at(word.substr(end)) == 0)
    ++end;
  const auto punctuation = [](std::string_view part) {
    return part.find_first_of("0123456789/\\_@&=#%-") == std::string_view::npos;
  };
  if (!punctuation(word.substr(0, begin)) || !punctuation(word.substr(end)))
    return {};
  if (end + 1 < word.size() && word[end] == '.' && ascii_letter(word[end + 1]))
    return {}; // the name of a file or an address
  for (std::size_t i = begin; i < end; ++i)
    if (!inside_word(word, i))
      return {};
  return {begin, end};
}

} // namespace strakebook::typeset
