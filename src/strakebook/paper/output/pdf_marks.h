#pragma once

#include <string>

#include "strakebook/paper/output/tag_tree.h"

namespace strakebook::output {

/// The marked content of one page (ISO 32000-1, 14.6): one piece for each stretch of items of one element.
class PdfMarks {
public:
  PdfMarks(TagTree &tree, int page) : tree_(tree), page_(page) {}

  /// An item that draws nothing gives its element a place in the order.
  void see(const page::TagPath &tag) {
    if (tag && !page::is_furniture(tag))
      tree_.element_of(tag);
  }

  /// A part of the page that a figure covers.
  void cover(const page::TagPath &figure, const base::Rect &part) { tree_.cover(tree_.element_of(figure), part); }

  /// Whether what is drawn next belongs elsewhere than what was drawn last.
  bool changes(const page::TagPath &tag) { return !open_ || (tag != last_ && place_of(tag) != place_of(last_)); }

  /// Ends the piece that is open, if any, and begins another.
  void change(const page::TagPath &tag, std::string &operators);

  /// Ends the piece that is open. Throws std::logic_error when pieces do not begin and end in pairs.
  void end(std::string &operators);

private:
  int place_of(const page::TagPath &tag);

  TagTree &tree_;
  int page_;
  page::TagPath last_;
  bool open_ = false;
};

} // namespace strakebook::output
