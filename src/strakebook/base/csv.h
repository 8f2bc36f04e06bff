#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/source.h"

namespace strakebook::base {

struct CsvCell {
  std::string_view text; ///< trimmed; points into the SourceFile
  int column = 0;        ///< 1-based, code points
};

struct CsvLine {
  int line = 0; ///< 1-based line in the file
  std::vector<CsvCell> cells;
};

/// Splits a file at `separator` (',' ';' or '\t'). Strict dialect: UTF-8 without BOM, LF or CRLF, the last line ends with
/// a line end, every line has as many cells as the first, no quotes, no blank lines; lines that begin with '#' are remarks.
/// Everything wrong is added to `sink` and the line left out.
std::vector<CsvLine> parse_csv(const SourcePtr &file, char separator, Diagnostics &sink);

} // namespace strakebook::base
