#include "strakebook/paper/output/pdf_number.h"

#include <array>
#include <charconv>
#include <cmath>
#include <stdexcept>

namespace strakebook::output {

namespace {

constexpr std::array<long long, 5> power_of_ten = {1, 10, 100, 1000, 10000};
constexpr std::string_view hex_digits = "0123456789abcdef";

} // namespace

void append_number(std::string &to, double value, int decimals) {
  if (!(std::abs(value) <= 1e9))
    throw std::logic_error("a number that a page cannot hold");
  const auto unit = power_of_ten.at(static_cast<std::size_t>(decimals));
  const auto scaled = std::llround(value * static_cast<double>(unit));
  auto magnitude = scaled < 0 ? -scaled : scaled;
  if (scaled < 0)
    to += '-';
  std::array<char, 24> digits;
  const auto whole = std::to_chars(digits.data(), digits.data() + digits.size(), magnitude / unit);
  to.append(digits.data(), whole.ptr);
  magnitude %= unit;
  if (magnitude != 0)
    to += '.';
  for (auto place = unit / 10; magnitude != 0; place /= 10) {
    to += static_cast<char>('0' + magnitude / place);
    magnitude %= place;
  }
}

void append_hex(std::string &to, std::string_view bytes) {
  for (char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    to += hex_digits[byte >> 4];
    to += hex_digits[byte & 15];
  }
}

void append_hex(std::string &to, unsigned sixteen_bits) {
  for (int shift = 12; shift >= 0; shift -= 4)
    to += hex_digits[sixteen_bits >> shift & 15];
}

} // namespace strakebook::output
