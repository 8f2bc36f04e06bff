#include <algorithm>
#include <stdexcept>

#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

struct Step {
  char32_t point = 0;
  std::size_t size = 0; ///< bytes; 0: not valid here
};

unsigned byte_at(std::string_view text, std::size_t at) { return static_cast<unsigned char>(text[at]); }

std::size_t size_by_lead(unsigned lead) {
  if (lead < 0x80)
    return 1;
  if (lead >= 0xC2 && lead < 0xE0)
    return 2;
  if (lead >= 0xE0 && lead < 0xF0)
    return 3;
  if (lead >= 0xF0 && lead < 0xF5)
    return 4;
  return 0;
}

Step step(std::string_view text, std::size_t at) {
  constexpr char32_t smallest[] = {0, 0, 0x80, 0x800, 0x10000};
  const unsigned lead = byte_at(text, at);
  const std::size_t size = size_by_lead(lead);
  if (size <= 1)
    return {lead, size};
  if (at + size > text.size())
    return {};
  char32_t point = lead & (0x7Fu >> size);
  for (std::size_t i = 1; i < size; ++i) {
    const unsigned next = byte_at(text, at + i);
    if ((next & 0xC0u) != 0x80u)
      return {};
    point = (point << 6) | (next & 0x3Fu);
  }
  const bool surrogate = point >= 0xD800 && point < 0xE000;
  if (point < smallest[size] || point > 0x10FFFF || surrogate)
    return {};
  return {point, size};
}

} // namespace

std::optional<std::size_t> first_invalid_utf8(std::string_view bytes) {
  for (std::size_t at = 0; at < bytes.size();) {
    const Step s = step(bytes, at);
    if (s.size == 0)
      return at;
    at += s.size;
  }
  return std::nullopt;
}

std::u32string code_points(std::string_view text) {
  std::u32string points;
  points.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const Step s = step(text, at);
    points += s.size == 0 ? U'\uFFFD' : s.point;
    at += s.size == 0 ? 1 : s.size;
  }
  return points;
}

std::size_t code_point_count(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0u) != 0x80u; }));
}

std::string utf8(char32_t point) {
  if (point > 0x10FFFF || (point >= 0xD800 && point < 0xE000))
    throw std::invalid_argument("not a Unicode character");
  const auto tail = [&](int shift) { return static_cast<char>(0x80 | ((point >> shift) & 0x3F)); };
  if (point < 0x80)
    return {static_cast<char>(point)};
  if (point < 0x800)
    return {static_cast<char>(0xC0 | (point >> 6)), tail(0)};
  if (point < 0x10000)
    return {static_cast<char>(0xE0 | (point >> 12)), tail(6), tail(0)};
  return {static_cast<char>(0xF0 | (point >> 18)), tail(12), tail(6), tail(0)};
}

} // namespace strakebook::base
