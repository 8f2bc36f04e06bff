#include "strakebook/base/text.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace strakebook::base {

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t");
  if (first == text.npos)
    return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::vector<std::string_view> words(std::string_view text) {
  constexpr std::string_view gaps = " \t\r\n";
  std::vector<std::string_view> found;
  for (std::size_t at = text.find_first_not_of(gaps); at != text.npos;) {
    const std::size_t end = std::min(text.find_first_of(gaps, at), text.size());
    found.push_back(text.substr(at, end - at));
    at = text.find_first_not_of(gaps, end);
  }
  return found;
}

std::string joined(std::span<const std::string> parts, std::string_view between) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0)
      text += between;
    text += parts[i];
  }
  return text;
}

std::string filled(std::string_view pattern, std::span<const Fill> values) {
  std::string text;
  while (!pattern.empty()) {
    const std::size_t brace = pattern.find_first_of("{}");
    text += pattern.substr(0, brace);
    if (brace == pattern.npos)
      break;
    const std::size_t close = pattern.find_first_of("{}", brace + 1);
    if (pattern[brace] == '}' || close == pattern.npos || pattern[close] == '{')
      throw std::invalid_argument("an unclosed brace in a pattern: " + std::string(pattern));
    const std::string_view name = pattern.substr(brace + 1, close - brace - 1);
    const auto value =
        std::find_if(values.begin(), values.end(), [&](const Fill &f) { return f.name == name; });
    if (value == values.end())
      throw std::invalid_argument("nothing fills {" + std::string(name) + "}");
    text += value->value;
    pattern.remove_prefix(close + 1);
  }
  return text;
}

namespace {

/// Edits from one word to the other: insert, drop or change a letter, or swap two neighbours (swaps are
/// common slips).
std::size_t edits_between(const std::u32string &a, const std::u32string &b) {
  std::vector<std::size_t> before(b.size() + 1), above(b.size() + 1), row(b.size() + 1);
  std::iota(above.begin(), above.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] != b[j - 1])});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before.swap(above);
    above.swap(row);
  }
  return above[b.size()];
}

} // namespace

std::optional<std::string> nearest(std::string_view word, std::span<const std::string> candidates) {
  const std::u32string letters = code_points(word);
  const std::size_t most = std::max<std::size_t>(1, letters.size() / 3);
  std::optional<std::string> best;
  std::size_t fewest = most + 1;
  for (const std::string &candidate : candidates) {
    const std::size_t edits = edits_between(letters, code_points(candidate));
    if (edits >= fewest)
      continue;
    fewest = edits;
    best = candidate;
  }
  return best;
}

} // namespace strakebook::base
