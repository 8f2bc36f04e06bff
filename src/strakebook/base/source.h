#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace strakebook::base {

/// A file as read: its path as the user named it, and all its bytes.
struct SourceFile {
  std::string path;
  std::string text;
};
using SourcePtr = std::shared_ptr<const SourceFile>;

/// A place in a source file. line and column count from 1, column and length in code points; line 0: no place.
struct SourceSpan {
  SourcePtr file;
  int line = 0;
  int column = 0;
  int length = 1;
};

/// The text of a line (from 1), without its line end. Empty when there is no such line.
std::string_view line_text(const SourceFile &file, int line);

/// A value with the place it was written at.
template <class T> struct Located {
  T value{};
  SourceSpan span{};
  const T *operator->() const { return &value; }
  const T &operator*() const { return value; }
};

} // namespace strakebook::base
