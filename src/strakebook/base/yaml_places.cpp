#include "strakebook/base/yaml_places.h"

#include <algorithm>
#include <utility>

#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

/// Offset of the quote that closes the text opened at `open`; npos: none does.
std::size_t closing_quote(std::string_view text, std::size_t open) {
  const char quote = text[open];
  for (std::size_t at = open + 1; at < text.size(); ++at) {
    if (quote == '"' && text[at] == '\\') {
      ++at;
    } else if (text[at] == quote) {
      const bool doubled = quote == '\'' && at + 1 < text.size() && text[at + 1] == quote;
      if (!doubled)
        return at;
      ++at;
    }
  }
  return text.npos;
}

int points(std::string_view text) { return std::max(1, static_cast<int>(code_point_count(text))); }

} // namespace

YamlPlaces::YamlPlaces(SourcePtr file) : file_(std::move(file)), starts_{0} {
  for (std::size_t at = 0; at < file_->text.size(); ++at)
    if (file_->text[at] == '\n' && at + 1 < file_->text.size())
      starts_.push_back(at + 1);
}

void YamlPlaces::go_to(int line) {
  line_ = line;
  column_ = 1;
  offset_ = starts_[static_cast<std::size_t>(line) - 1];
}

void YamlPlaces::next_point() {
  const std::string_view text = file_->text;
  do
    ++offset_;
  while (offset_ < text.size() && (static_cast<unsigned char>(text[offset_]) & 0xC0u) == 0x80u);
  ++column_;
}

std::size_t YamlPlaces::offset(int line, int column) {
  const std::string_view text = file_->text;
  if (line < 1 || line > last_line())
    return text.size();
  if (line != line_ || column < column_)
    go_to(line);
  while (column_ < column && offset_ < text.size() && text[offset_] != '\n')
    next_point();
  return offset_;
}

int YamlPlaces::column_of_byte(int line, int byte) {
  if (line < 1 || line > last_line())
    return byte;
  const std::size_t wanted = starts_[static_cast<std::size_t>(line) - 1] + static_cast<std::size_t>(byte) - 1;
  if (line != line_ || wanted < offset_)
    go_to(line);
  while (offset_ < wanted && offset_ < file_->text.size())
    next_point();
  return column_;
}

char YamlPlaces::at(int line, int column) {
  const std::size_t where = offset(line, column);
  return where < file_->text.size() ? file_->text[where] : '\0';
}

std::string_view YamlPlaces::rest_of_line(std::size_t from) const {
  const std::string_view text = file_->text;
  const std::size_t end = std::min(text.find('\n', from), text.size());
  const std::string_view rest = text.substr(from, end - from);
  return trimmed(rest.ends_with('\r') ? rest.substr(0, rest.size() - 1) : rest);
}

SourceSpan YamlPlaces::token(int line, int column) {
  const std::size_t from = offset(line, column);
  const std::string_view text = file_->text;
  const std::size_t end = std::min(text.find_first_of(" \t\r\n,[]{}", from), text.size());
  return span(line, column, points(text.substr(from, end - from)));
}

WrittenScalar YamlPlaces::scalar(int line, int column, std::string_view value) {
  const std::size_t from = offset(line, column);
  const std::string_view text = std::string_view(file_->text).substr(from);
  WrittenScalar out{span(line, column), false, true, line};
  if (text.starts_with('"') || text.starts_with('\''))
    return quoted(out, from);
  out.quoted = text.starts_with('|') || text.starts_with('>');
  const bool on_one_line = !out.quoted && text.starts_with(value);
  out.span.length = points(on_one_line ? value : rest_of_line(from));
  return out;
}

WrittenScalar YamlPlaces::quoted(WrittenScalar scalar, std::size_t open) const {
  const std::string_view text = file_->text;
  const std::size_t close = closing_quote(text, open);
  scalar.quoted = true;
  scalar.closed = close != text.npos;
  const std::string_view inner = text.substr(open, scalar.closed ? close - open + 1 : text.npos);
  const auto line_ends = static_cast<int>(std::count(inner.begin(), inner.end(), '\n'));
  scalar.last_line += line_ends;
  scalar.span.length = points(line_ends == 0 ? inner : rest_of_line(open));
  return scalar;
}

bool YamlPlaces::null_word(int line, int column) {
  const std::string_view word = rest_of_line(offset(line, column));
  const std::string_view first = word.substr(0, word.find_first_of(" \t,]}"));
  return first == "~" || first == "null" || first == "Null" || first == "NULL";
}

SourceSpan YamlPlaces::empty_item(int line, int column) {
  const std::string_view before = std::string_view(file_->text).substr(0, offset(line, column));
  const std::size_t sign = before.find_last_of("-[,");
  if (sign == before.npos)
    return span(line, column);
  const auto next = std::upper_bound(starts_.begin(), starts_.end(), sign);
  const std::size_t start = *(next - 1);
  return span(static_cast<int>(next - starts_.begin()), points(before.substr(start, sign - start + 1)));
}

} // namespace strakebook::base
