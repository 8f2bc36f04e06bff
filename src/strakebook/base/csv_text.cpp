#include "strakebook/base/csv_text.h"

namespace strakebook::base {
namespace {

std::string quoted(const std::string &text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos)
    return text;
  std::string out = "\"";
  for (const char c : text)
    out += c == '"' ? "\"\"" : std::string(1, c);
  return out + "\"";
}

} // namespace

std::string guarded(std::string_view text) {
  constexpr std::string_view begins_formula = "=+-@\t\r\n";
  const bool taken = !text.empty() && begins_formula.find(text.front()) != std::string_view::npos;
  return (taken ? "'" : "") + std::string(text);
}

std::string csv_line(std::span<const CsvText> cells) {
  std::string out;
  for (const CsvText &cell : cells)
    out += (&cell == &cells.front() ? "" : ",") + quoted(cell.figure ? cell.text : guarded(cell.text));
  return out + "\r\n";
}

} // namespace strakebook::base
