#include "strakebook/paper/typeset/table.h"

#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/caption.h"
#include "strakebook/paper/typeset/table_rows.h"
#include "strakebook/paper/typeset/table_rules.h"
#include "strakebook/paper/typeset/table_split.h"
#include "strakebook/paper/typeset/table_widths.h"

namespace strakebook::typeset {
namespace {

std::string page_words(const std::string &pattern, int page) {
  const base::Fill fills[] = {{"page", std::to_string(page)}};
  return base::filled(pattern, fills);
}

/// One part of a table on one page: what stands above its entries, the entries that fit, and its foot.
class PartOfTable {
public:
  PartOfTable(const content::Table &table, std::size_t from, const Region &region, const Context &context)
      : table_(table), from_(from), region_(region), context_(context),
        look_(style::table_style(context.style, table.style)), entries_(entries_of(table)),
        widths_(table_widths(table, region.width, context)),
        looks_(cell_looks(style::text_style(context.style, look_.body))) {}

  Outcome laid() {
    if (from_ > 0 && from_ >= entries_.size())
      return Nothing{};
    Fragment set = top();
    const auto foot_on = foot(true);
    auto rows = rows_that_fit(set.size.height, foot_on.size.height);
    const std::size_t end =
        split_at(entries_, from_, from_ + rows.size(), look_.keep_rows, region_.empty_page());
    if (end == from_ && !entries_.empty())
      return NextPage{"two rows of a table with its head", {}, {}};
    rows.resize(end - from_);
    add_rows(set, std::move(rows));
    add_rule(set, set.size.height, look_.rule_foot, look_.rule_tone, context_);
    const bool whole = end == entries_.size();
    add_foot(set, whole ? foot(false) : foot_on);
    set.size.width = region_.width;
    if (!region_.holds(set.size.height))
      return NextPage{"a table's head and foot", {}, {}};
    if (whole)
      return Whole{std::move(set)};
    return Part{std::move(set), {end, {}}};
  }

private:
  Fragment top() const {
    Fragment set = caption();
    auto head = set_table_head(table_, widths_, context_);
    stack(set, std::move(head), style::measure(context_.style, "caption-gap"));
    set.first_baseline = {};
    if (from_ > 0 && entries_[from_].row && !entries_[from_].group->head.empty())
      stack(set, set_group_head(table_, *entries_[from_].group, widths_, true, context_), {});
    set.size.width = widths_.total;
    return set;
  }

  Fragment caption() const {
    const auto &style = style::text_style(context_.style, look_.caption);
    const std::string from_page =
        from_ > 0 ? page_words(context_.labels.continued_from, context_.page - 1) : std::string();
    if (!table_.unlabelled)
      return set_caption(table_.label, table_.caption, style, from_page, region_.width, context_);
    return from_page.empty() ? Fragment{} : set_caption({}, {}, style, from_page, region_.width, context_);
  }

  Fragment foot(bool goes_on) const {
    const std::string on_page =
        goes_on ? page_words(context_.labels.continued_on, context_.page + 1) : std::string();
    if (table_.notes.empty() && on_page.empty())
      return {};
    return set_foot(table_.notes, style::text_style(context_.style, look_.note), on_page, region_.width,
                    context_);
  }

  base::Pt foot_gap() const { return style::measure(context_.style, "note-gap"); }

  void add_foot(Fragment &set, Fragment foot) const {
    if (!foot.items.empty())
      stack(set, std::move(foot), foot_gap());
  }

  Fragment set_entry(std::size_t i) const {
    const auto &entry = entries_[i];
    if (entry.row)
      return set_row(table_, *entry.row, widths_, looks_, context_);
    return set_group_head(table_, *entry.group, widths_, false, context_);
  }

  /// The last part needs no "continued" line, so the last entries are tried with the room that its notes
  /// leave.
  std::vector<Fragment> rows_that_fit(base::Pt top, base::Pt foot_on) const {
    const base::Pt reserve_on = foot_on + foot_gap();
    const auto last_foot = foot(false);
    const base::Pt reserve_last = last_foot.items.empty() ? base::Pt{} : last_foot.size.height + foot_gap();
    std::vector<Fragment> rows;
    base::Pt height = top;
    std::size_t fit_with_more = 0;
    for (std::size_t i = from_; i < entries_.size(); ++i) {
      auto row = set_entry(i);
      height += row.size.height;
      if (!region_.holds(height + reserve_last))
        break;
      rows.push_back(std::move(row));
      if (region_.holds(height + reserve_on))
        fit_with_more = rows.size();
    }
    if (from_ + rows.size() < entries_.size())
      rows.resize(fit_with_more);
    return rows;
  }

  void add_rows(Fragment &set, std::vector<Fragment> rows) const {
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const auto *row = entries_[from_ + i].row;
      const bool last = i + 1 == rows.size();
      const base::Pt height = rows[i].size.height;
      append(set.items, std::move(rows[i]), {base::Pt{}, set.size.height});
      set.size.height += height;
      if (row && row->rule_after && !last)
        add_rule(set, set.size.height, look_.rule_row, look_.row_rule_tone, context_);
    }
  }

  const content::Table &table_;
  std::size_t from_;
  const Region &region_;
  const Context &context_;
  const style::TableStyle &look_;
  std::vector<TableEntry> entries_;
  const TableWidths &widths_;
  CellLooks looks_;
};

} // namespace

Outcome lay_table(const content::Table &table, const Resume &from, const Region &region,
                  const Context &context) {
  return PartOfTable(table, from.index, region, context).laid();
}

} // namespace strakebook::typeset
