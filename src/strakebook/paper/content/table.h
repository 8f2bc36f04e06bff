#pragma once

#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/source.h"
#include "strakebook/paper/content/drawing.h"
#include "strakebook/paper/content/inlines.h"

namespace strakebook::content {

struct Column {
  enum class Align { left, right, centre, decimal } align = Align::left;
  std::string head;
  std::string unit;      ///< on its own line under the head; may be empty
  bool stretch = false;  ///< takes what is left and may break its lines; at least one column of a table stretches or all are natural
  std::string measure;   ///< fixed width by name; empty: as wide as its widest cell
};

struct Cell {
  Inlines text;
  std::optional<Drawing> glyph; ///< a small drawing instead of text
  std::string sign;             ///< meaning of a sign at the left of the text; may be empty
  std::string spoken;    ///< what the sign says in words
  int across = 1;               ///< columns it takes
};

struct Row {
  std::string id;        ///< "mark/PW 9": links lead here; unique in the document; may be empty
  std::vector<Cell> cells;
  bool rule_after = false;
  bool total = false;    ///< sums of the rows over it: under a rule, and never parted from the row before it
  bool changed = false;
  base::SourceSpan origin;
};

struct RowGroup {
  Inlines head; ///< may be empty: no group head
  std::string id;
  std::vector<Row> rows;
  bool head_changed = false;
};

/// Splits over pages with its head repeated. `label` is given by compose ("Table 11.2"), numbers are not typeset's.
struct Table {
  std::string style = "plain"; ///< name of a table style
  std::string label;
  Inlines caption;
  std::vector<Column> columns;
  std::vector<RowGroup> groups;
  std::vector<Inlines> notes;
  bool unlabelled = false; ///< no caption line
  bool caption_changed = false;             ///< or the heads of columns, or a row is gone
  std::vector<std::size_t> changed_notes = {}; ///< their places
};

} // namespace strakebook::content
