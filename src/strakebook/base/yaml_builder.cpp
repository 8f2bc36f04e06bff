#include "strakebook/base/yaml_builder.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/yaml_words.h"

namespace strakebook::base {
namespace {

constexpr std::string_view one_document = "exactly one document in a file";
constexpr std::string_view no_tag = "?";      // the parser's tag for a plain text without one
constexpr std::string_view quoted_text = "!"; // the parser's tag for a quoted text, or for a lone !

} // namespace

void YamlBuilder::refuse(Code code, const SourceSpan &span, std::string message, std::string write,
                         std::string expected) {
  sink_.error(code, span, std::move(message), std::move(expected), std::move(write));
}

void YamlBuilder::document(At at) {
  if (++documents_ == 1)
    return;
  refuse(Code::yaml_documents, places_.token(at.line, at.column),
         "a second document, or text after the end of the first",
         "the rest in a file of its own, or close a quote or bracket above", std::string(one_document));
  throw YamlStop{};
}

void YamlBuilder::finish() {
  if (documents_ > 0)
    return;
  refuse(Code::yaml_documents, places_.span(1, 1), "the file holds no document", "",
         std::string(one_document));
}

bool YamlBuilder::wants_key() const {
  return !frames_.empty() && frames_.back().node.kind == YamlNode::Kind::map && !frames_.back().has_key;
}

SourceSpan YamlBuilder::holder_or(const SourceSpan &own) const {
  return !frames_.empty() && frames_.back().has_key ? frames_.back().key_span : own;
}

void YamlBuilder::count_node(At at) {
  if (++nodes_ <= limits_.nodes)
    return;
  refuse(Code::file_too_large, places_.span(at.line, at.column),
         fmt::format("more than {} values in one file", limits_.nodes),
         "readings in a readings file (CSV) that the survey names");
  throw YamlStop{};
}

void YamlBuilder::refuse_properties(At at, std::string_view tag, bool anchored) {
  const SourceSpan span = places_.token(at.line, at.column);
  if (anchored)
    refuse(Code::yaml_forbidden, span, "an anchor (& and a name)",
           "the value alone; quotes about a text that begins with &",
           "every value written out where it stands");
  const bool bare_sign = tag == quoted_text && places_.at(at.line, at.column) == '!';
  if ((tag != no_tag && tag != quoted_text && !tag.empty()) || bare_sign)
    refuse(Code::yaml_forbidden, span, "a tag (! and a name)",
           "the value alone; quotes about a text that begins with !", "values without tags");
}

/// The parser gives the place of the token after an empty value; that of the key or of the dash tells more.
SourceSpan YamlBuilder::place_of_null(At at) {
  const bool keyed = !frames_.empty() && frames_.back().has_key;
  const bool listed = !frames_.empty() && frames_.back().node.kind == YamlNode::Kind::list;
  const bool same_line = !keyed || frames_.back().key_span.line == at.line;
  if (same_line && places_.null_word(at.line, at.column))
    return places_.token(at.line, at.column);
  if (listed)
    return places_.empty_item(at.line, at.column);
  return holder_or(places_.span(std::min(at.line, places_.last_line()), at.column));
}

void YamlBuilder::null(At at, bool anchored) {
  count_node(at);
  if (anchored)
    refuse_properties(at, no_tag, true);
  const SourceSpan span = place_of_null(at);
  if (wants_key())
    return unfit_key(span, "a key is missing, or is the word for nothing");
  YamlNode node;
  node.span = span;
  put(std::move(node));
}

void YamlBuilder::alias(At at) {
  count_node(at);
  const SourceSpan span = places_.token(at.line, at.column);
  refuse(Code::yaml_forbidden, span, "an alias (* and a name)",
         "the value itself; quotes about a text that begins with *",
         "every value written out where it stands");
  if (wants_key())
    return wait_for_dropped(span);
  YamlNode node;
  node.span = span;
  put(std::move(node));
}

void YamlBuilder::scalar(At at, std::string_view tag, bool anchored, const std::string &value) {
  count_node(at);
  refuse_properties(at, tag, anchored);
  WrittenScalar written = places_.scalar(at.line, at.column, value);
  if (!written.closed) {
    refuse(Code::yaml_open_quote, written.span,
           "a quoted text that begins here is not closed before the end of the file", "the closing quote");
    throw YamlStop{};
  }
  written.quoted = written.quoted || tag == quoted_text;
  if (written.last_line > at.line)
    long_quote_ = written;
  if (wants_key())
    return key(value, written.quoted, written.span);
  YamlNode node;
  node.kind = YamlNode::Kind::scalar;
  node.text = value;
  node.quoted = written.quoted;
  node.span = written.span;
  put(std::move(node));
}

void YamlBuilder::key(const std::string &text, bool quoted, const SourceSpan &span) {
  Frame &map = frames_.back();
  map.has_key = true;
  map.key = text;
  map.key_span = span;
  map.drop = false;
  if (text == "<<" && !quoted) {
    refuse(Code::yaml_forbidden, span, "a merge key (<<)", "the keys themselves",
           "every value written out where it stands");
    map.drop = true;
    return;
  }
  const auto [first, added] = map.seen.emplace(text, span.line);
  if (added)
    return;
  refuse(Code::yaml_duplicate_key, span, fmt::format("\"{}\" is written twice in this map", text),
         "one of the two, or another name",
         fmt::format("each key once; the first is in line {}", first->second));
  map.drop = true;
}

void YamlBuilder::unfit_key(const SourceSpan &span, std::string message) {
  refuse(Code::yaml_syntax, span, std::move(message), "a word before the colon", "a text as key");
  wait_for_dropped(span);
}

void YamlBuilder::wait_for_dropped(const SourceSpan &span) {
  Frame &map = frames_.back();
  map.has_key = map.drop = true;
  map.key_span = span;
}

void YamlBuilder::open(YamlNode::Kind kind, At at, std::string_view tag, bool anchored) {
  count_node(at);
  refuse_properties(at, tag, anchored);
  Frame frame;
  frame.node.kind = kind;
  frame.opened = at;
  frame.node.span = holder_or(places_.token(at.line, at.column));
  if (static_cast<int>(frames_.size()) >= limits_.depth) {
    refuse(Code::yaml_too_deep, frame.node.span,
           fmt::format("maps or lists nested more than {} deep", limits_.depth), "fewer levels");
    throw YamlStop{};
  }
  frames_.push_back(std::move(frame));
}

void YamlBuilder::close() {
  YamlNode node = std::move(frames_.back().node);
  frames_.pop_back();
  if (wants_key())
    return unfit_key(node.span, "a map or list stands where a key should");
  put(std::move(node));
}

void YamlBuilder::put(YamlNode node) {
  if (frames_.empty()) {
    root_ = std::move(node);
    return;
  }
  Frame &holder = frames_.back();
  if (holder.node.kind == YamlNode::Kind::list) {
    holder.node.items.push_back(std::move(node));
    return;
  }
  if (!holder.drop)
    holder.node.entries.push_back({std::move(holder.key), holder.key_span, std::move(node)});
  holder.has_key = false;
}

void YamlBuilder::parser_fault(At at, std::string_view parser_message) {
  if (long_quote_.span.line > 0 && long_quote_.last_line == at.line) {
    refuse(Code::yaml_open_quote, long_quote_.span,
           fmt::format("a quoted text that begins here runs on to line {}, where what follows does not fit",
                       at.line),
           "the closing quote");
    return;
  }
  const bool past_end = at.line > places_.last_line() || at.line < 1;
  const int line = past_end ? places_.last_line() : at.line;
  const YamlFault fault = explain_yaml(parser_message, line_text(*places_.span(line, 1).file, line));
  const int column = fault.column > 0 ? fault.column : past_end ? 1 : std::max(at.column - fault.back, 1);
  refuse(fault.code, places_.token(line, column), fault.message, fault.write,
         closing_expected(fault.unclosed));
}

/// Which bracket is still open: the innermost of its kind, since that one was being read.
std::string YamlBuilder::closing_expected(char bracket) const {
  const auto kind = bracket == '[' ? YamlNode::Kind::list : YamlNode::Kind::map;
  const auto frame =
      std::find_if(frames_.rbegin(), frames_.rend(), [&](const Frame &f) { return f.node.kind == kind; });
  if (bracket == '\0' || frame == frames_.rend())
    return "";
  return fmt::format("{} for the {} of line {}", bracket == '[' ? ']' : '}', bracket, frame->opened.line);
}

} // namespace strakebook::base
