#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "strakebook/base/yaml_places.h"
#include "strakebook/base/yaml_tree.h"

namespace strakebook::base {

/// Thrown to leave the parser when nothing after this place can be trusted; the reason is in the sink
/// already.
struct YamlStop {};

/// Builds the tree from a parser's events and refuses what a survey may not use.
class YamlBuilder {
public:
  YamlBuilder(const SourcePtr &file, Diagnostics &sink, YamlLimits limits)
      : places_(file), sink_(sink), limits_(limits) {}

  /// A place, line and column from 1, in code points.
  struct At {
    int line = 0, column = 0;
  };
  At at(int parser_line, int parser_column) { ///< the parser counts from 0, and columns in bytes
    return {parser_line + 1, places_.column_of_byte(parser_line + 1, parser_column + 1)};
  }

  void document(At at);
  void null(At at, bool anchored);
  void alias(At at);
  void scalar(At at, std::string_view tag, bool anchored, const std::string &value);
  void open(YamlNode::Kind kind, At at, std::string_view tag, bool anchored);
  void close();
  void parser_fault(At at, std::string_view parser_message); ///< the parser gave up here
  void finish();                                             ///< the end of the file was reached

  YamlNode take() { return std::move(root_); }

private:
  /// A map or list that is still open; a map waits for a key, then for its value.
  struct Frame {
    YamlNode node;
    At opened;
    bool has_key = false;
    bool drop = false; ///< the waiting key was refused, so its value is read and left out
    std::string key;
    SourceSpan key_span;
    std::unordered_map<std::string, int> seen; ///< key -> its line
  };

  bool wants_key() const;
  void refuse(Code code, const SourceSpan &span, std::string message, std::string write = "",
              std::string expected = "");
  void refuse_properties(At at, std::string_view tag, bool anchored);
  void key(const std::string &text, bool quoted, const SourceSpan &span);
  void unfit_key(const SourceSpan &span, std::string message);
  void wait_for_dropped(const SourceSpan &span);
  void put(YamlNode node);
  void count_node(At at);
  SourceSpan holder_or(const SourceSpan &own) const;
  SourceSpan place_of_null(At at);
  std::string closing_expected(char bracket) const;

  YamlPlaces places_;
  Diagnostics &sink_;
  YamlLimits limits_;
  std::vector<Frame> frames_;
  YamlNode root_;
  WrittenScalar long_quote_; ///< the last quoted text that runs over line ends; line 0: none
  std::size_t nodes_ = 0;
  int documents_ = 0;
};

} // namespace strakebook::base
