#include "strakebook/paper/typeset/table_body.h"

#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/table_rows.h"
#include "strakebook/paper/typeset/table_rules.h"
#include "strakebook/paper/typeset/table_tags.h"
#include "strakebook/paper/typeset/table_widths.h"

namespace strakebook::typeset {
namespace {

/// Heights are sums of doubles: a billionth of a point over is not over.
bool fits(base::Pt height, base::Pt room) { return height.v <= room.v + 1e-6; }

/// Columns of the page that the table fills: how many, how wide, and from one to the next.
struct Lanes {
  int count = 1;
  base::Pt width, step;
};

Lanes lanes_of(const content::Table &table, const style::TableStyle &look, base::Pt width, const Context &context) {
  if (look.abreast < 2)
    return {1, width, {}};
  const base::Pt gutter = style::measure(context.style, "column-gutter");
  const base::Pt narrow = (width - gutter * (look.abreast - 1.0)) / look.abreast;
  return fits_unbroken(table, narrow, context) ? Lanes{look.abreast, narrow, narrow + gutter} : Lanes{1, width, {}};
}

class Body {
public:
  Body(const content::Table &table, const std::vector<TableEntry> &entries, std::size_t from, base::Pt width,
       const Context &context)
      : table_(table), entries_(entries), from_(from), context_(context),
        look_(style::table_style(context.style, table.style)), lanes_(lanes_of(table, look_, width, context)),
        widths_(table_widths(table, lanes_.width, context)),
        looks_(cell_looks(style::text_style(context.style, look_.body))) {}

  TableBody laid(const BodyRoom &room) {
    const auto ends = levelled(column_ends(room), room);
    TableBody body;
    body.end = ends.empty() ? from_ : ends.back();
    std::size_t begin = from_;
    for (std::size_t c = 0; c < std::max<std::size_t>(1, ends.size()); ++c) {
      const base::Pt left = lanes_.step * static_cast<double>(c);
      const std::size_t end = ends.empty() ? from_ : ends[c];
      Fragment column = set_column(begin, end, moved(context_, left));
      body.fragment.size.width = left + column.size.width;
      body.fragment.size.height = std::max(body.fragment.size.height, column.size.height);
      append(body.fragment.items, std::move(column), {left, base::Pt{}});
      begin = end;
    }
    return body;
  }

private:
  using Ends = std::vector<std::size_t>; ///< of the columns, one after the other

  Ends column_ends(const BodyRoom &room) {
    Ends ends;
    std::size_t begin = from_;
    while (begin < entries_.size() && ends.size() < static_cast<std::size_t>(lanes_.count)) {
      const std::size_t fit = entries_that_fit(begin, room);
      const std::size_t end = split_at(entries_, begin, fit, {look_.keep_rows, look_.keep_group}, room.empty_page && ends.empty());
      if (end == begin)
        break;
      ends.push_back(end);
      begin = end;
    }
    return ends;
  }

  /// The last part of a table needs less room under it, so the last entries are tried with that.
  std::size_t entries_that_fit(std::size_t begin, const BodyRoom &room) {
    base::Pt height = top(begin, context_).size.height;
    std::size_t fit_with_more = begin;
    for (std::size_t i = begin; i < entries_.size(); ++i) {
      height += entry(i).size.height;
      if (!fits(height, room.ending))
        return fit_with_more;
      if (fits(height, room.going_on))
        fit_with_more = i + 1;
    }
    return entries_.size();
  }

  /// Where several columns end the table: the least height, in steps of a row, that still holds all of it.
  Ends levelled(Ends ends, const BodyRoom &room) {
    if (lanes_.count < 2 || ends.empty() || ends.back() != entries_.size())
      return ends;
    base::Pt height = top(from_, context_).size.height;
    for (std::size_t i = from_; i < entries_.size(); ++i)
      height += entry(i).size.height / lanes_.count;
    for (; height.v < room.ending.v; height += look_.row_pitch) {
      const Ends lower = column_ends({height, height, false});
      if (!lower.empty() && lower.back() == entries_.size())
        return lower;
    }
    return ends;
  }

  Fragment top(std::size_t begin, const Context &context) const {
    Fragment set = barred(set_table_head(table_, widths_, begin > 0 ? repeated(context) : context),
                          table_.unlabelled && table_.caption_changed && begin == 0, context);
    set.first_baseline = {};
    if (begin > 0 && entries_[begin].row && !entries_[begin].group->head.empty())
      stack(set, set_group_head(table_, *entries_[begin].group, widths_, true, repeated(context)), {});
    set.size.width = widths_.total;
    return set;
  }

  Fragment set_column(std::size_t begin, std::size_t end, const Context &context) {
    Fragment set = begin < entries_.size() ? top(begin, context) : set_table_head(table_, widths_, context);
    for (std::size_t i = begin; i < end; ++i) {
      const auto *row = entries_[i].row;
      if (row && row->total)
        add_rule(set, set.size.height, look_.rule_head, look_.rule_tone, context);
      // A change bar stands in the margin, whatever the column: its row is set for its place.
      const bool barred = row ? row->changed : entries_[i].group->head_changed;
      Fragment line = barred ? set_entry(i, context) : std::move(entry(i));
      const base::Pt height = line.size.height;
      append(set.items, std::move(line), {base::Pt{}, set.size.height});
      set.size.height += height;
      if (row && row->rule_after && i + 1 < end)
        add_rule(set, set.size.height, look_.rule_row, look_.row_rule_tone, context);
    }
    add_rule(set, set.size.height, look_.rule_foot, look_.rule_tone, context);
    return set;
  }

  Fragment set_entry(std::size_t i, const Context &context) const {
    const auto &one = entries_[i];
    const Context row = body_row_context(context, table_, *one.group, one.row);
    return one.row ? set_row(table_, *one.row, widths_, looks_, row)
                   : set_group_head(table_, *one.group, widths_, false, row);
  }

  /// Set once, in the order in which the columns ask.
  Fragment &entry(std::size_t i) {
    while (set_.size() <= i - from_)
      set_.push_back(set_entry(from_ + set_.size(), context_));
    return set_[i - from_];
  }

  const content::Table &table_;
  const std::vector<TableEntry> &entries_;
  std::size_t from_;
  const Context &context_;
  const style::TableStyle &look_;
  Lanes lanes_;
  const TableWidths &widths_;
  CellLooks looks_;
  std::vector<Fragment> set_;
};

} // namespace

TableBody lay_table_body(const content::Table &table, const std::vector<TableEntry> &entries, std::size_t from,
                         base::Pt width, const BodyRoom &room, const Context &context) {
  return Body(table, entries, from, width, context).laid(room);
}

} // namespace strakebook::typeset
