#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace strakebook::base {

/// Byte offset of the first byte that is not valid UTF-8 (overlong forms and surrogates refused); nullopt: all valid.
std::optional<std::size_t> first_invalid_utf8(std::string_view bytes);

/// Decodes UTF-8 into code points. A byte that is not valid there becomes U+FFFD (readers refuse such files first; this is
/// for showing them).
std::u32string code_points(std::string_view text);
std::size_t code_point_count(std::string_view text); ///< code points of valid UTF-8, without decoding
std::string utf8(char32_t point); ///< std::invalid_argument for a surrogate or above U+10FFFF

std::string_view trimmed(std::string_view text);               ///< without blanks and tabs at either end
std::vector<std::string_view> words(std::string_view text);    ///< split at runs of blanks, tabs and line ends
std::string joined(std::span<const std::string> parts, std::string_view between);

/// Replaces every {name} in a pattern by the value of that name. A name without a value, or a brace without its partner,
/// throws std::invalid_argument: patterns come from layouts, which are checked when read.
struct Fill { std::string_view name; std::string value; };
std::string filled(std::string_view pattern, std::span<const Fill> values);

/// The candidate nearest to `word` by edit distance, if it is near enough to be a slip (at most a third of its
/// letters, at least one); nullopt otherwise.
std::optional<std::string> nearest(std::string_view word, std::span<const std::string> candidates);

} // namespace strakebook::base
