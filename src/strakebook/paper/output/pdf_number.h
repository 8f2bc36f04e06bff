#pragma once

#include <string>
#include <string_view>

namespace strakebook::output {

/// Appends a number as PDF writes them, rounded to `decimals` (at most 4), without trailing zeros or
/// exponent. Throws std::logic_error if it is not finite or beyond +-1e9.
void append_number(std::string &to, double value, int decimals = 3);

/// Appends bytes as hexadecimal digits.
void append_hex(std::string &to, std::string_view bytes);
void append_hex(std::string &to, unsigned sixteen_bits); ///< four digits

} // namespace strakebook::output
