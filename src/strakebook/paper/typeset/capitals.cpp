#include "strakebook/paper/typeset/capitals.h"

#include "strakebook/base/text.h"

namespace strakebook::typeset {
namespace {

bool between(char32_t c, char32_t first, char32_t last) { return c >= first && c <= last; }

char32_t capital(char32_t c) {
  if (between(c, U'a', U'z') || (between(c, 0xE0, 0xFE) && c != 0xF7))
    return c - 0x20;
  if (c == 0xFF)
    return 0x178;
  // Latin Extended-A pairs capital and small letter, the capital even in the first and last stretch, odd
  // between.
  const bool small_is_odd = between(c, 0x100, 0x137) || between(c, 0x14A, 0x177);
  const bool small_is_even = between(c, 0x139, 0x148) || between(c, 0x179, 0x17E);
  if (c == 0x131)
    return U'I';
  if ((small_is_odd && c % 2 == 1) || (small_is_even && c % 2 == 0))
    return c - 1;
  return c;
}

} // namespace

std::string capitals(std::string_view text) {
  std::string out;
  for (const char32_t c : base::code_points(text))
    out += c == 0xDF ? "SS" : base::utf8(capital(c));
  return out;
}

} // namespace strakebook::typeset
