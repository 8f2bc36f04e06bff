#include "strakebook/paper/output/svg_text.h"

#include <array>
#include <map>
#include <stdexcept>

namespace strakebook::output {

namespace {

constexpr std::string_view unfit = "\xEF\xBF\xBD"; // U+FFFD

/// Names that cairo makes from numbers of the process; glyphs and clips are numbered in each file by themselves.
constexpr auto counted = std::to_array<std::string_view>({"surface", "image", "source-"});

bool digit(char c) { return c >= '0' && c <= '9'; }

std::string_view entity(char c) {
  switch (c) {
  case '&': return "&amp;";
  case '<': return "&lt;";
  case '>': return "&gt;";
  case '"': return "&quot;";
  default: return {};
  }
}

bool control(char c) { return static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\n'; }

/// The length of a counted name with its number that begins right after a quote or a hash at `at`; 0: none.
std::size_t counted_name(std::string_view svg, std::size_t at) {
  if (at == 0 || (svg[at - 1] != '"' && svg[at - 1] != '#')) return 0;
  for (const auto name : counted) {
    if (svg.compare(at, name.size(), name) != 0) continue;
    std::size_t end = at + name.size();
    while (end < svg.size() && digit(svg[end])) ++end;
    if (end > at + name.size()) return end - at;
  }
  return 0;
}

std::string element(std::string_view name, std::string_view text) {
  if (text.empty()) return {};
  std::string out = "<";
  out.append(name).append(">").append(xml_text(text)).append("</").append(name).append(">\n");
  return out;
}

} // namespace

std::string xml_text(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto three = text.substr(i, 3);
    if (const auto name = entity(text[i]); !name.empty()) {
      out += name;
    } else if (control(text[i])) {
      out += unfit;
    } else if (three == "\xEF\xBF\xBE" || three == "\xEF\xBF\xBF") {
      out += unfit;
      i += 2;
    } else {
      out += text[i];
    }
  }
  return out;
}

std::string renumbered(std::string_view svg) {
  std::string out;
  out.reserve(svg.size());
  std::map<std::string_view, std::string> names;
  for (std::size_t i = 0; i < svg.size();) {
    const std::size_t length = counted_name(svg, i);
    if (length == 0) {
      out += svg[i++];
      continue;
    }
    const auto old = svg.substr(i, length);
    const auto made = names.try_emplace(old, "part" + std::to_string(names.size() + 1)).first;
    out += made->second;
    i += length;
  }
  return out;
}

std::string with_words(std::string svg, std::string_view title, std::string_view description) {
  const auto root = svg.find("<svg ");
  const auto end = root == std::string::npos ? root : svg.find(">\n", root);
  if (end == std::string::npos) throw std::logic_error("an SVG file without its root element");
  svg.insert(end + 2, element("title", title) + element("desc", description));
  return svg;
}

} // namespace strakebook::output
