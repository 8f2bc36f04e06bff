#pragma once

#include <span>
#include <string>
#include <string_view>

namespace strakebook::base {

/// A cell to be written. `figure`: our own spelling of a number, which a spreadsheet may read as one.
struct CsvText {
  std::string text;
  bool figure = false;
};

/// One line of RFC 4180: cells parted by commas, CRLF at the end, and in quotes, doubled inside, where a cell holds a comma, a
/// quote or a line end. A text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a line end) is written
/// with an apostrophe before it; a figure is not, so that a negative one stays a number.
std::string csv_line(std::span<const CsvText> cells);

/// The text as csv_line guards it.
std::string guarded(std::string_view text);

} // namespace strakebook::base
