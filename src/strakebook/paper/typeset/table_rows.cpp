#include "strakebook/paper/typeset/table_rows.h"

#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/drawing.h"
#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/table_rules.h"
#include "strakebook/paper/typeset/table_tags.h"
#include "strakebook/paper/typeset/table_widths.h"

namespace strakebook::typeset {
namespace {

using Align = content::Column::Align;

struct Place {
  base::Pt left, width;
  Align align;
  base::Pt point, middle; ///< of the figures of a decimal column, from its left edge; nought: it has none
};

base::Pt shift_for(const Fragment &line, const Place &place) {
  const base::Pt slack = place.width - line.size.width;
  switch (place.align) {
  case Align::left:
    return {};
  case Align::right:
    return slack;
  case Align::centre:
    return slack / 2;
  case Align::decimal: {
    const auto point = point_position(line);
    if (!point && place.middle.v == 0)
      return slack;
    // Words and dashes stand centred under the figures.
    const base::Pt wanted = point ? place.point - *point : place.middle - line.size.width / 2;
    return std::max(base::Pt{}, std::min(slack, wanted));
  }
  }
  return {};
}

/// A cell on one line where it fits, else broken; its left edge is the column's.
Fragment set_cell(const content::Cell &cell, const Place &place, const CellLooks &looks,
                  const TextOptions &options, const Context &context) {
  if (cell.glyph)
    return draw(*cell.glyph, place.width, context, context.id);
  const auto text = cell_inlines(cell);
  const auto &style = looks.of(place.align);
  const bool has_break = std::any_of(text.begin(), text.end(), [](const auto &part) {
    return std::holds_alternative<content::LineBreak>(part);
  });
  if (!has_break) {
    auto line = set_line(text, style, options, context);
    if (line.size.width.v <= place.width.v + 1e-6) {
      const base::Pt shift = shift_for(line, place);
      for (auto &item : line.items)
        translate(item, {shift, {}});
      return line;
    }
  }
  return set_text(text, style, place.width, options, context);
}

Place place_of(const content::Table &table, const TableWidths &widths, std::size_t column, int across) {
  const Align align = across > 1 ? Align::left : table.columns[column].align; // words across columns of figures
  return {widths.left[column], span_width(widths, column, across), align, widths.point[column],
          widths.middle[column]};
}

Context row_context(const content::Row &row, const Context &context) {
  Context own = context;
  if (!row.id.empty())
    own.id = row.id;
  if (row.origin.line > 0)
    own.origin = row.origin;
  return own;
}

std::vector<Fragment> set_heads(const content::Table &table, const TableWidths &widths, bool units,
                                const style::TextStyle &style, const Context &context) {
  const auto looks = cell_looks(style);
  std::vector<Fragment> heads;
  for (std::size_t c = 0; c < table.columns.size(); ++c) {
    const auto &column = table.columns[c];
    auto place = place_of(table, widths, c, 1);
    if (place.align == Align::decimal)
      place.align = Align::right;
    content::Cell cell;
    cell.text = content::plain(units ? column.unit : column.head);
    heads.push_back(set_cell(cell, place, looks, {true, {}}, column_head_context(context, c, 1)));
  }
  return heads;
}

base::Pt highest(const std::vector<Fragment> &heads) {
  base::Pt height;
  for (const auto &head : heads)
    height = std::max(height, head.items.empty() ? base::Pt{} : head.size.height);
  return height;
}

} // namespace

const style::TextStyle &CellLooks::of(Align align) const {
  if (align == Align::left)
    return left;
  return align == Align::centre ? centre : right;
}

CellLooks cell_looks(const style::TextStyle &base) {
  CellLooks looks{base, base, base};
  looks.left.align = style::Align::left;
  looks.right.align = style::Align::right;
  looks.centre.align = style::Align::centre;
  return looks;
}

Fragment set_row(const content::Table &table, const content::Row &row, const TableWidths &widths,
                 const CellLooks &looks, const Context &context) {
  const Context own = row_context(row, context);
  const auto &look = style::table_style(context.style, table.style);
  const base::Pt pad = std::max(base::Pt{}, look.row_pitch - looks.left.leading);
  std::vector<std::pair<Place, Fragment>> cells;
  base::Pt height = look.row_pitch;
  std::size_t c = 0;
  for (const auto &cell : row.cells) {
    if (c >= table.columns.size())
      break;
    const Place place = place_of(table, widths, c, cell.across);
    const Context in_cell = moved(body_cell_context(own, c, cell.across), place.left);
    cells.emplace_back(place, set_cell(cell, place, looks, {true, {}}, in_cell));
    if (cells.back().second.items.empty())
      cells.back().second.items.push_back(presence(in_cell.tag, in_cell.id));
    height = std::max(height, cells.back().second.size.height + pad);
    c += static_cast<std::size_t>(std::max(1, cell.across));
  }
  Fragment set;
  set.size = {widths.total, height};
  if (!row.id.empty())
    set.items.push_back(anchor(row.id, {}));
  for (auto &[place, cell] : cells) {
    const base::Pt top = cell.first_baseline.v > 0 ? pad / 2 : (height - cell.size.height) / 2;
    append(set.items, std::move(cell), {place.left, top});
  }
  if (row.changed)
    set.items.push_back(change_bar({}, height, context));
  return set;
}

Fragment set_table_head(const content::Table &table, const TableWidths &widths, const Context &context) {
  const auto &look = style::table_style(context.style, table.style);
  const base::Pt pad = style::measure(context.style, "table-pad");
  const Context row = head_row_context(context);
  auto heads = set_heads(table, widths, false, style::text_style(context.style, look.head), row);
  auto units = set_heads(table, widths, true, style::text_style(context.style, look.unit), row);
  const base::Pt head_height = highest(heads);
  Fragment set;
  for (std::size_t c = 0; c < heads.size(); ++c)
    set.items.push_back(presence(column_head_context(row, c, 1).tag, context.id));
  set.size = {widths.total, pad + head_height + highest(units) + pad};
  for (std::size_t c = 0; c < heads.size(); ++c)
    append(set.items, std::move(heads[c]), {widths.left[c], pad + head_height - heads[c].size.height});
  for (std::size_t c = 0; c < units.size(); ++c)
    append(set.items, std::move(units[c]), {widths.left[c], pad + head_height});
  add_rule(set, {}, look.rule_top, look.rule_tone, context);
  add_rule(set, set.size.height, look.rule_head, look.rule_tone, context);
  return set;
}

Fragment set_group_head(const content::Table &table, const content::RowGroup &group,
                        const TableWidths &widths, bool continued, const Context &context) {
  const auto &look = style::table_style(context.style, table.style);
  Fragment set;
  set.size.width = widths.total;
  if (!group.head.empty()) {
    const auto &style = style::text_style(context.style, look.group);
    Context own = column_head_context(context, 0, table.columns.size());
    if (!group.id.empty())
      own.id = group.id;
    auto words = group.head;
    if (continued)
      words = std::move(words) + content::plain("\xC2\xA0 ") + content::italic(context.labels.continued);
    auto text = set_text(words, style, widths.total, {true, {}}, own);
    set.size.height = style.space_before + text.size.height + style.space_after;
    append(set.items, std::move(text), {{}, style.space_before});
  }
  if (!group.id.empty() && !continued)
    set.items.push_back(anchor(group.id, {}));
  if (group.head_changed && !continued)
    set.items.push_back(change_bar({}, set.size.height, context));
  add_rule(set, set.size.height, look.rule_group, look.group_rule_tone, context);
  return set;
}

} // namespace strakebook::typeset
