#include "strakebook/base/plain_text.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_control(std::string_view bytes, std::size_t at) {
  const unsigned c = static_cast<unsigned char>(bytes[at]);
  if (c == '\t' || c == '\n')
    return false;
  if (c == '\r')
    return at + 1 >= bytes.size() || bytes[at + 1] != '\n';
  if (c < 0x20 || c == 0x7F)
    return true;
  // U+0080 to U+009F, of which U+0085 would be a line end to some programs and not to others.
  return c == 0xC2 && at + 1 < bytes.size() && static_cast<unsigned char>(bytes[at + 1]) < 0xA0;
}

unsigned control_point(std::string_view bytes, std::size_t at) {
  const unsigned c = static_cast<unsigned char>(bytes[at]);
  return c == 0xC2 ? static_cast<unsigned char>(bytes[at + 1]) : c;
}

TextFault control_fault(std::string_view bytes, std::size_t at, Code code) {
  if (bytes[at] == '\r')
    return {at, code, "a carriage return that does not end a line",
            "save the file with line feeds as line ends"};
  return {at, code, fmt::format("a control character (U+{:04X})", control_point(bytes, at)),
          "take the character out, or save the file as UTF-8 text"};
}

} // namespace

std::optional<TextFault> first_fault(std::string_view bytes, Code otherwise) {
  if (bytes.starts_with(byte_order_mark))
    return TextFault{0, otherwise, "the file begins with a byte order mark",
                     "save the file as UTF-8 without it"};
  const auto invalid = first_invalid_utf8(bytes);
  const std::size_t end = invalid.value_or(bytes.size());
  for (std::size_t at = 0; at < end; ++at)
    if (is_control(bytes, at))
      return control_fault(bytes, at, otherwise);
  if (!invalid)
    return std::nullopt;
  const unsigned byte = static_cast<unsigned char>(bytes[*invalid]);
  return TextFault{*invalid, Code::not_utf8, fmt::format("a byte (0x{:02X}) that is not UTF-8 text", byte),
                   "save the file as UTF-8"};
}

SourceSpan span_at(const SourcePtr &file, std::size_t offset) {
  const std::string_view before = std::string_view(file->text).substr(0, offset);
  const std::size_t start = before.rfind('\n') == before.npos ? 0 : before.rfind('\n') + 1;
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  return {file, static_cast<int>(line), static_cast<int>(code_point_count(before.substr(start))) + 1, 1};
}

} // namespace strakebook::base
