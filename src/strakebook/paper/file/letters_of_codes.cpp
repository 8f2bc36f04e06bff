#include "strakebook/paper/file/letters_of_codes.h"

#include <charconv>
#include <optional>

#include "strakebook/base/text.h"

namespace strakebook::file {

namespace {

/// The next <hexadecimal> of a text, which is shortened to what stands behind it.
std::optional<std::string_view> next_code(std::string_view &from) {
  const auto open = from.find('<'), close = from.find('>', open);
  if (open == from.npos || close == from.npos) return std::nullopt;
  const auto code = from.substr(open + 1, close - open - 1);
  from.remove_prefix(close + 1);
  return code;
}

unsigned number_of(std::string_view hexadecimal) {
  unsigned number = 0;
  std::from_chars(hexadecimal.data(), hexadecimal.data() + hexadecimal.size(), number, 16);
  return number;
}

bool is_surrogate(unsigned unit) { return unit >= 0xD800 && unit < 0xE000; }

/// UTF-16BE in hexadecimal as UTF-8; what is no letter is left out.
std::string utf8_of(std::string_view hexadecimal) {
  constexpr std::size_t unit_digits = 4;
  std::string text;
  unsigned high = 0;
  for (; hexadecimal.size() >= unit_digits; hexadecimal.remove_prefix(unit_digits)) {
    const unsigned unit = number_of(hexadecimal.substr(0, unit_digits));
    if (!is_surrogate(unit)) text += base::utf8(unit);
    else if (unit < 0xDC00) high = unit;
    else if (high != 0) text += base::utf8(0x10000 + ((high & 0x3FF) << 10) + (unit & 0x3FF));
    if (unit < 0xD800 || unit >= 0xDC00) high = 0;
  }
  return text;
}

} // namespace

std::map<unsigned, std::string> letters_of_codes(std::string_view map) {
  constexpr std::string_view begin = "beginbfchar", end = "endbfchar";
  std::map<unsigned, std::string> letters;
  for (auto at = map.find(begin); at != map.npos; at = map.find(begin, at + 1)) {
    auto block = map.substr(at + begin.size());
    block = block.substr(0, block.find(end));
    while (const auto code = next_code(block))
      if (const auto text = next_code(block)) letters.insert_or_assign(number_of(*code), utf8_of(*text));
  }
  return letters;
}

} // namespace strakebook::file
