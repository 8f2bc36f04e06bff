#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

constexpr std::size_t widest_shown = 160; ///< code points of a source line on the terminal
constexpr std::size_t shown_before = 80;  ///< of which before the place, when the line is cut
constexpr char32_t cut_sign = U'\u2026';

bool is_control(char32_t c) { return (c < 0x20 && c != U'\t') || (c >= 0x7F && c < 0xA0); }

/// A source line with its place, made safe to show: no control characters, not wider than widest_shown.
struct Excerpt {
  std::u32string text;
  std::size_t from = 0, length = 1;
};

Excerpt excerpt_of(const SourceSpan &span) {
  std::u32string line = code_points(line_text(*span.file, span.line));
  std::replace_if(line.begin(), line.end(), is_control, U'\uFFFD');
  const std::size_t column = static_cast<std::size_t>(std::max(span.column, 1)) - 1;
  std::size_t from = std::min(column, line.size());
  if (line.size() > widest_shown) {
    const std::size_t first = from > shown_before ? from - shown_before : 0;
    const bool tail = line.size() > first + widest_shown;
    line = line.substr(first, widest_shown);
    if (tail)
      line.back() = cut_sign;
    if (first > 0)
      line.front() = cut_sign;
    from -= first;
  }
  const std::size_t room = std::max<std::size_t>(line.size() - from, 1);
  return {line, from, std::clamp<std::size_t>(static_cast<std::size_t>(std::max(span.length, 1)), 1, room)};
}

std::string as_utf8(const std::u32string &points) {
  std::string text;
  for (const char32_t c : points)
    text += utf8(c);
  return text;
}

/// Tabs stay tabs under tabs, so that the carets stand under the place at any tab width.
std::string marks_under(const Excerpt &excerpt) {
  std::string marks;
  for (const char32_t c : excerpt.text.substr(0, excerpt.from))
    marks += c == U'\t' ? '\t' : ' ';
  return marks.append(excerpt.length, '^');
}

std::string place_text(const SourceSpan &span) {
  if (!span.file)
    return "strakebook";
  if (span.line < 1)
    return span.file->path;
  return fmt::format("{}:{}:{}", span.file->path, span.line, span.column);
}

/// "  label: text"; further lines of the text stand under its first.
std::string labelled(std::string_view label, std::string_view text) {
  if (text.empty())
    return "";
  std::string out = fmt::format("  {}: ", label);
  const std::string indent(out.size(), ' ');
  for (const char c : text.substr(0, text.find_last_not_of('\n') + 1)) {
    out += c;
    if (c == '\n')
      out += indent;
  }
  return out + "\n";
}

std::string block_of(const Diagnostic &d) {
  std::string out =
      fmt::format("{}: {} {}: {}\n", place_text(d.span), name_of(d.severity), number_of(d.code), d.message);
  if (d.span.file && d.span.line > 0) {
    const Excerpt excerpt = excerpt_of(d.span);
    const std::string number = std::to_string(d.span.line);
    out += fmt::format("  {} | {}\n", number, as_utf8(excerpt.text));
    out += fmt::format("  {} | {}\n", std::string(number.size(), ' '), marks_under(excerpt));
  }
  out += labelled("expected", d.expected) + labelled("write", d.write);
  return out + labelled("id", d.subject);
}

std::string counted(std::size_t n, std::string_view name) {
  if (n == 0)
    return fmt::format("no {}s", name);
  return fmt::format("{} {}{}", n, name, n == 1 ? "" : "s");
}

} // namespace

std::string terminal_text(const Diagnostics &diagnostics) {
  std::string out;
  for (const Diagnostic &d : diagnostics.all())
    out += block_of(d) + "\n";
  out += counted(diagnostics.errors(), "error");
  for (const Severity severity : {Severity::warning, Severity::note})
    if (const auto n = diagnostics.count(severity); n > 0)
      out += ", " + counted(n, name_of(severity));
  return out + "\n";
}

} // namespace strakebook::base
