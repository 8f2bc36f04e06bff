#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "strakebook/base/source.h"

namespace strakebook::base {

/// A scalar as it stands in the source.
struct WrittenScalar {
  SourceSpan span;     ///< on its first line
  bool quoted = false; ///< with quotes, or a block text
  bool closed = true;  ///< a quoted text has its closing quote
  int last_line = 0;   ///< where a quoted text ends
};

/// Finds in a source what stands at a parser's places. Asked in the order of the text, it costs one walk over
/// it.
class YamlPlaces {
public:
  explicit YamlPlaces(SourcePtr file);

  int column_of_byte(int line, int byte); ///< both from 1; the parser counts bytes, readers count characters
  SourceSpan span(int line, int column, int length = 1) const { return {file_, line, column, length}; }
  char at(int line, int column);          ///< first byte there; 0 past the end
  SourceSpan token(int line, int column); ///< up to the next blank, comma or line end
  WrittenScalar scalar(int line, int column, std::string_view value); ///< value: as the parser understood it
  bool null_word(int line, int column);                               ///< ~, null, Null or NULL stands there
  SourceSpan empty_item(int line, int column); ///< the sign before an item of which nothing is written
  int last_line() const { return static_cast<int>(starts_.size()); }

private:
  std::size_t offset(int line, int column);
  void go_to(int line);
  void next_point();
  std::string_view rest_of_line(std::size_t from) const;
  WrittenScalar quoted(WrittenScalar scalar, std::size_t open) const;

  SourcePtr file_;
  std::vector<std::size_t> starts_; ///< byte offset of each line
  int line_ = 1, column_ = 1;       ///< the place last asked for, and its offset
  std::size_t offset_ = 0;
};

} // namespace strakebook::base
