#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/paper/style/setting.h"

namespace strakebook::typeset {

/// Where lines may end inside a word without a mark: byte offsets after a hyphen or dash between letters, and
/// in long paths, addresses and digests.
std::vector<std::size_t> open_breaks(std::string_view word, const style::LongWords &long_words);

/// Takes soft hyphens (U+00AD) out of a word; returns the byte offsets in what is left where they stood.
std::vector<std::size_t> take_soft_hyphens(std::string &word);

/// The part of a word that a language may divide: small letters alone, without the punctuation around them.
/// Words with a figure, a capital (names, codes) or a hyphen of their own have none.
struct Letters {
  std::size_t begin = 0, end = 0;
};
Letters dividable_letters(std::string_view word);

} // namespace strakebook::typeset
