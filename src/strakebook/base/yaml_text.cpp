#include "strakebook/base/yaml_text.h"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

constexpr std::size_t indent_step = 2;
/// A longer key is no longer recognised by its colon, and is written after a question mark (YAML 1.2, 8.2.2).
constexpr std::size_t longest_plain_key = 1000;

std::string indent(std::size_t depth) { return std::string(depth * indent_step, ' '); }

/// What no reader of a text file should have to meet as it is: controls, line ends that not everyone knows, a byte order mark.
bool must_be_escaped(char32_t point) {
  return point < 0x20 || (point >= 0x7F && point < 0xA0) || point == 0x2028 || point == 0x2029 || point == 0xFEFF;
}

std::string escaped(char32_t point) {
  switch (point) {
  case U'\n': return "\\n";
  case U'\t': return "\\t";
  case U'"': return "\\\"";
  case U'\\': return "\\\\";
  default: break;
  }
  return must_be_escaped(point) ? fmt::format("\\u{:04x}", static_cast<unsigned>(point)) : utf8(point);
}

std::string in_quotes(std::string_view text) {
  std::string out = "\"";
  for (const char32_t point : code_points(text)) out += escaped(point);
  return out + '"';
}

bool is_letter_or_digit(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool begins_plainly(std::string_view text) {
  if (text[0] == '-' || text[0] == '.') return text.size() > 1 && is_letter_or_digit(text[1]);
  return is_letter_or_digit(text[0]) || static_cast<unsigned char>(text[0]) >= 0x80 || text[0] == '(' || text[0] == '+';
}

bool is_a_word_for_nothing(std::string_view text) { return text == "null" || text == "Null" || text == "NULL" || text == "~"; }

/// Whether a text means itself without quotes, as a key and as a value.
bool may_stand_plainly(std::string_view text) {
  if (text.empty() || !begins_plainly(text) || is_a_word_for_nothing(text)) return false;
  if (text.back() == ' ' || text.back() == ':' || text.find(": ") != text.npos || text.find(" #") != text.npos) return false;
  return std::ranges::none_of(code_points(text), must_be_escaped);
}

/// Whether a text of several lines means itself as a block: no line of it begins where the indent of the block would be in doubt.
bool may_be_a_block(std::string_view text) {
  const std::string_view body = text.substr(0, text.size() - (text.ends_with('\n') ? 1 : 0));
  if (body.empty() || body.find('\n') == body.npos || body.back() == '\n' || body[0] == '\n' || body[0] == ' ') return false;
  return std::ranges::none_of(code_points(body), [](char32_t point) { return point != U'\n' && must_be_escaped(point); });
}

std::string block(std::string_view text, std::size_t depth) {
  std::string out = text.ends_with('\n') ? "|" : "|-";
  if (text.ends_with('\n')) text.remove_suffix(1);
  while (true) {
    const auto end = text.find('\n');
    const auto line = text.substr(0, end);
    out += '\n' + (line.empty() ? std::string() : indent(depth) + std::string(line));
    if (end == text.npos) return out;
    text.remove_prefix(end + 1);
  }
}

std::string scalar(std::string_view text, std::size_t depth) {
  if (may_stand_plainly(text)) return std::string(text);
  return may_be_a_block(text) ? block(text, depth) : in_quotes(text);
}

std::string key_text(const std::string &key) { return may_stand_plainly(key) ? key : in_quotes(key); }

class Writer {
public:
  std::string take(const YamlNode &tree) {
    value(tree, 0, false);
    return std::move(out_);
  }

private:
  /// A value after its key, its dash, or at the beginning. `depth`: of what it holds; `inline_first`: the first of its lines goes on
  /// behind a dash.
  void value(const YamlNode &node, std::size_t depth, bool inline_first) {
    switch (node.kind) {
    case YamlNode::Kind::empty: out_ += "~\n"; return;
    case YamlNode::Kind::scalar: out_ += scalar(node.text, std::max<std::size_t>(depth, 1)) + '\n'; return;
    case YamlNode::Kind::list: return list(node, depth, inline_first);
    case YamlNode::Kind::map: return map(node, depth, inline_first);
    }
  }

  void list(const YamlNode &node, std::size_t depth, bool inline_first) {
    if (node.items.empty()) out_ += "[]\n";
    for (const auto &item : node.items) {
      begin_line(depth, inline_first);
      out_ += "- ";
      value(item, depth + 1, true);
    }
  }

  void map(const YamlNode &node, std::size_t depth, bool inline_first) {
    if (node.entries.empty()) out_ += "{}\n";
    for (const auto &entry : node.entries) {
      begin_line(depth, inline_first);
      write_key(key_text(entry.key), depth);
      const bool nests = !entry.value.items.empty() || !entry.value.entries.empty();
      out_ += nests ? "\n" : " ";
      value(entry.value, depth + 1, false);
    }
  }

  void write_key(const std::string &key, std::size_t depth) {
    if (key.size() > longest_plain_key) out_ += "? " + key + '\n' + indent(depth);
    else out_ += key;
    out_ += ':';
  }

  void begin_line(std::size_t depth, bool &inline_first) {
    if (!inline_first) out_ += indent(depth);
    inline_first = false;
  }

  std::string out_;
};

} // namespace

std::string yaml_text(const YamlNode &tree) { return Writer().take(tree); }

} // namespace strakebook::base
