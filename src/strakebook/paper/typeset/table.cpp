#include "strakebook/paper/typeset/table.h"

#include <algorithm>
#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/caption.h"
#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/memo.h"
#include "strakebook/paper/typeset/table_body.h"

namespace strakebook::typeset {
namespace {

std::string page_words(const std::string &pattern, int page) {
  const base::Fill fills[] = {{"page", std::to_string(page)}};
  return base::filled(pattern, fills);
}

/// One part of a table on one page: its caption, the entries that fit, and its foot.
class PartOfTable {
public:
  PartOfTable(const content::Table &table, std::size_t from, const Region &region, const Context &context)
      : table_(table), from_(from), region_(region), context_(context),
        own_(from > 0 ? repeated(context) : context), table_context_(tagged(context, {.role = page::Role::table})),
        look_(style::table_style(context.style, table.style)), entries_(context.memo.entries_in(table)) {}

  Outcome laid() const {
    if (from_ > 0 && from_ >= entries_.size())
      return Nothing{};
    Fragment set = caption();
    const auto foot_on = foot(true), foot_at_end = foot(false);
    auto body = lay_table_body(table_, entries_, from_, region_.width, room(set, foot_on, foot_at_end), table_context_);
    if (body.end == from_ && !entries_.empty())
      return does_not_fit();
    stack(set, std::move(body.fragment), caption_gap());
    set.first_baseline = {};
    const bool whole = body.end == entries_.size();
    add_foot(set, whole ? foot_at_end : foot_on);
    set.size.width = region_.width;
    if (!region_.holds(set.size.height))
      return NextPage{"a table's head and foot", {}, {}};
    if (whole)
      return Whole{std::move(set)};
    return Part{std::move(set), {body.end, {}}};
  }

private:
  /// Names the row with the most words of those that stay together: the one to shorten.
  NextPage does_not_fit() const {
    const content::Row *longest = nullptr;
    const auto words = [&](const content::Row &row) {
      std::size_t letters = 0;
      for (const auto &cell : row.cells)
        letters += plain_text(cell.text, context_).size();
      return letters;
    };
    const auto last = std::min(entries_.size(), from_ + static_cast<std::size_t>(look_.keep_rows) + 1);
    for (std::size_t i = from_; i < last; ++i)
      if (const auto *row = entries_[i].row; row != nullptr && (longest == nullptr || words(*row) > words(*longest)))
        longest = row;
    return {"two rows of a table with its head", longest == nullptr ? base::SourceSpan{} : longest->origin,
            longest == nullptr ? std::string() : longest->id};
  }

  Fragment caption() const {
    const auto &style = style::text_style(context_.style, look_.caption);
    const std::string from_page =
        from_ > 0 ? page_words(context_.labels.continued_from, context_.page - 1) : std::string();
    if (!table_.unlabelled)
      return barred(set_caption(table_.label, table_.caption, style, from_page, region_.width, from_ > 0 ? own_ : table_context_),
                    table_.caption_changed && from_ == 0, context_);
    return from_page.empty() ? Fragment{} : set_caption({}, {}, style, from_page, region_.width, own_);
  }

  Fragment foot(bool goes_on) const {
    const std::string on_page =
        goes_on ? page_words(context_.labels.continued_on, context_.page + 1) : std::string();
    if (table_.notes.empty() && on_page.empty())
      return {};
    return set_foot(table_.notes, table_.changed_notes, style::text_style(context_.style, look_.note), on_page, region_.width,
                    own_);
  }

  base::Pt caption_gap() const { return style::measure(context_.style, "caption-gap"); }
  base::Pt foot_gap() const { return style::measure(context_.style, "note-gap"); }

  BodyRoom room(const Fragment &caption, const Fragment &foot_on, const Fragment &foot_at_end) const {
    const base::Pt above = caption.items.empty() ? base::Pt{} : caption.size.height + caption_gap();
    const base::Pt left = region_.height_left - above;
    const auto taken = [&](const Fragment &foot) { return foot.items.empty() ? base::Pt{} : foot.size.height + foot_gap(); };
    return {left - taken(foot_on), left - taken(foot_at_end), region_.empty_page()};
  }

  void add_foot(Fragment &set, Fragment foot) const {
    if (!foot.items.empty())
      stack(set, std::move(foot), foot_gap());
  }

  const content::Table &table_;
  std::size_t from_;
  const Region &region_;
  const Context &context_;
  Context own_;           ///< of what stands with every part: it counts once
  Context table_context_; ///< of the table inside the group that holds its notes too
  const style::TableStyle &look_;
  const std::vector<TableEntry> &entries_;
};

/// So few rows that the table is not split, unless they are high.
bool small(const content::Table &table, const Context &context) {
  std::size_t rows = 0;
  for (const auto &group : table.groups)
    rows += group.rows.size();
  return rows <= static_cast<std::size_t>(style::table_style(context.style, table.style).keep_table);
}

} // namespace

Outcome lay_table(const content::Table &table, const Resume &from, const Region &region,
                  const Context &context) {
  auto outcome = PartOfTable(table, from.index, region, context).laid();
  const bool may_wait = from.at_start() && !region.empty_page() && small(table, context);
  if (!may_wait || !std::holds_alternative<Part>(outcome))
    return outcome;
  const Region low{region.width, style::measure(context.style, "keep-table-height"), region.full_height};
  if (std::holds_alternative<Whole>(PartOfTable(table, 0, low, context).laid()))
    return NextPage{"a small table", {}, {}};
  return outcome;
}

} // namespace strakebook::typeset
