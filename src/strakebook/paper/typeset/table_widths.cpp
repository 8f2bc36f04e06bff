#include "strakebook/paper/typeset/table_widths.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/text_pieces.h"

namespace strakebook::typeset {
namespace {

const TextOptions figures{true, {}};

/// What the cells of a column need.
struct Need {
  base::Pt natural, least; ///< on one line; with every line broken that can be
  base::Pt before_point, after_point;
};

bool digit(char c) { return c >= '0' && c <= '9'; }

base::Pt widest_unbroken(const std::vector<Piece> &pieces) {
  base::Pt widest, run;
  for (const auto &piece : pieces) {
    run = may_end(piece) ? base::Pt{} : run + piece.width;
    widest = std::max(widest, run);
  }
  return widest;
}

base::Pt glyph_width(const content::Drawing &glyph, const style::Style &style) {
  base::Pt width;
  if (glyph.x.rule == content::Scale::Rule::named)
    width = style::measure(style, glyph.x.measure) * (glyph.x1 - glyph.x0);
  for (const auto *pad : {&glyph.pad_left, &glyph.pad_right})
    if (!pad->empty())
      width += style::measure(style, *pad);
  return width;
}

class Measurer {
public:
  Measurer(const content::Table &table, const Context &context)
      : table_(table), look_(style::table_style(context.style, table.style)),
        body_(style::text_style(context.style, look_.body)), context_(context), needs_(table.columns.size()) {
  }

  std::vector<Need> needs() {
    for (std::size_t c = 0; c < table_.columns.size(); ++c)
      measure_head(c);
    for (const auto &group : table_.groups)
      for (const auto &row : group.rows)
        measure_row(row);
    for (auto &need : needs_)
      need.natural = std::max(need.natural, need.before_point + need.after_point);
    return std::move(needs_);
  }

private:
  bool measured(std::size_t column) const { return table_.columns[column].measure.empty(); }

  void measure_head(std::size_t c) {
    if (!measured(c))
      return;
    grow(needs_[c], content::plain(table_.columns[c].head), style::text_style(context_.style, look_.head));
    grow(needs_[c], content::plain(table_.columns[c].unit), style::text_style(context_.style, look_.unit));
  }

  void measure_row(const content::Row &row) {
    std::size_t c = 0;
    for (const auto &cell : row.cells) {
      if (cell.across == 1 && c < needs_.size() && measured(c))
        measure_cell(cell, c);
      c += static_cast<std::size_t>(std::max(1, cell.across));
    }
  }

  void measure_cell(const content::Cell &cell, std::size_t c) {
    if (cell.glyph)
      grow(needs_[c], glyph_width(*cell.glyph, context_.style));
    else if (table_.columns[c].align == content::Column::Align::decimal)
      grow_decimal(needs_[c], set_line(cell_inlines(cell), body_, figures, context_));
    else
      grow(needs_[c], cell_inlines(cell), body_);
  }

  static void grow(Need &need, base::Pt width) {
    need.natural = std::max(need.natural, width);
    need.least = std::max(need.least, width);
  }

  void grow(Need &need, const content::Inlines &text, const style::TextStyle &style) const {
    const auto pieces = pieces_of(text, style, figures, context_);
    base::Pt width;
    for (const auto &piece : pieces)
      width += piece.width;
    need.natural = std::max(need.natural, width);
    need.least = std::max(need.least, widest_unbroken(pieces));
  }

  static void grow_decimal(Need &need, const Fragment &line) {
    grow(need, line.size.width);
    if (const auto point = point_position(line)) {
      need.before_point = std::max(need.before_point, *point);
      need.after_point = std::max(need.after_point, line.size.width - *point);
    }
  }

  const content::Table &table_;
  const style::TableStyle &look_;
  const style::TextStyle &body_;
  const Context &context_;
  std::vector<Need> needs_;
};

/// Takes `excess` from the columns in proportion to what each can give above its floor; returns what is left
/// to take.
base::Pt squeeze(std::vector<base::Pt> &widths, const std::vector<base::Pt> &floors, base::Pt excess) {
  base::Pt spare;
  for (std::size_t c = 0; c < widths.size(); ++c)
    spare += std::max(base::Pt{}, widths[c] - floors[c]);
  if (spare.v <= 0 || excess.v <= 0)
    return excess;
  const double part = std::min(1.0, excess / spare);
  for (std::size_t c = 0; c < widths.size(); ++c)
    widths[c] -= std::max(base::Pt{}, widths[c] - floors[c]) * part;
  return excess - spare * part;
}

/// First lines are broken at blanks; only if that is not enough do stretching columns also cut words.
void squeeze_all(TableWidths &result, const content::Table &table, const std::vector<Need> &needs,
                 base::Pt excess, base::Pt narrowest) {
  std::vector<base::Pt> least, cut;
  for (std::size_t c = 0; c < needs.size(); ++c) {
    least.push_back(table.columns[c].measure.empty() ? needs[c].least : result.width[c]);
  }
  const base::Pt left = squeeze(result.width, least, excess);
  for (std::size_t c = 0; c < needs.size(); ++c)
    cut.push_back(table.columns[c].stretch ? narrowest : result.width[c]);
  squeeze(result.width, cut, left);
}

/// Gives what is left to the stretching columns, in proportion to their natural widths.
void stretch(std::vector<base::Pt> &widths, const content::Table &table, base::Pt left) {
  base::Pt sum;
  double count = 0;
  for (std::size_t c = 0; c < widths.size(); ++c)
    if (table.columns[c].stretch) {
      sum += widths[c];
      count += 1;
    }
  for (std::size_t c = 0; c < widths.size(); ++c)
    if (table.columns[c].stretch)
      widths[c] += sum.v > 0 ? left * (widths[c] / sum) : left / count;
}

base::Pt sum_of(const std::vector<base::Pt> &widths) {
  base::Pt sum;
  for (const auto width : widths)
    sum += width;
  return sum;
}

TableWidths arranged(const content::Table &table, const std::vector<Need> &needs, base::Pt width,
                     const Context &context) {
  const auto &look = style::table_style(context.style, table.style);
  TableWidths result;
  bool stretches = false;
  for (std::size_t c = 0; c < table.columns.size(); ++c) {
    const auto &column = table.columns[c];
    result.width.push_back(column.measure.empty() ? needs[c].natural
                                                  : style::measure(context.style, column.measure));
    stretches = stretches || column.stretch;
  }
  const double gaps = std::max(0.0, static_cast<double>(table.columns.size()) - 1);
  base::Pt gap = look.cell_gap;
  const base::Pt left = width - gap * gaps - sum_of(result.width);
  result.squeezed = left.v < 0;
  if (result.squeezed) {
    squeeze_all(result, table, needs, -left, look.row_pitch);
  } else {
    // Gaps share in what is left over, so that figures do not crowd beside one wide column of words.
    const base::Pt most = std::max(base::Pt{}, style::measure(context.style, "table-gap-most") - gap);
    const base::Pt more = gaps > 0 ? std::min(left / (gaps + (stretches ? 1 : 0)), most) : base::Pt{};
    gap += more;
    if (stretches)
      stretch(result.width, table, left - more * gaps);
  }
  base::Pt x;
  for (std::size_t c = 0; c < table.columns.size(); ++c) {
    result.left.push_back(x);
    const Need &need = needs[c];
    const base::Pt point = result.width[c] - need.after_point;
    const bool figures_in_it = need.before_point.v > 0 || need.after_point.v > 0;
    result.point.push_back(point);
    result.middle.push_back(figures_in_it ? point + (need.after_point - need.before_point) / 2 : base::Pt{});
    x += result.width[c] + gap;
  }
  result.total = table.columns.empty() ? base::Pt{} : x - gap;
  result.too_wide = result.total.v > width.v + 1e-6;
  return result;
}

bool prints_page(const content::Reference &reference) {
  return reference.form != content::Reference::Form::text && reference.form != content::Reference::Form::label;
}

bool refers(const content::Table &table) {
  for (const auto &group : table.groups)
    for (const auto &row : group.rows)
      for (const auto &cell : row.cells)
        for (const auto &part : cell.text)
          if (const auto *reference = std::get_if<content::Reference>(&part); reference && prints_page(*reference))
            return true;
  return false;
}

const TableWidths &measured(const content::Table &table, base::Pt width, const Context &context) {
  const auto key = std::make_pair(&table, width.v);
  auto it = context.memo.tables.find(key);
  if (it == context.memo.tables.end()) {
    it = context.memo.tables.emplace(key, arranged(table, Measurer(table, context).needs(), width, context))
             .first;
    it->second.refers = refers(table);
  }
  return it->second;
}

} // namespace

bool fits_unbroken(const content::Table &table, base::Pt width, const Context &context) {
  return !measured(table, width, context).squeezed;
}

const TableWidths &table_widths(const content::Table &table, base::Pt width, const Context &context) {
  const TableWidths &widths = measured(table, width, context);
  if (widths.too_wide)
    report(context, base::Code::block_too_large, "the columns of this table are wider together than the page",
           "a table no wider than its place", "fewer columns, or a column that may break its lines");
  return widths;
}

base::Pt span_width(const TableWidths &widths, std::size_t first, int across) {
  const std::size_t last =
      std::min(widths.left.size(), first + static_cast<std::size_t>(std::max(1, across))) - 1;
  return widths.left[last] + widths.width[last] - widths.left[first];
}

std::optional<base::Pt> point_position(const Fragment &line) {
  bool in_number = false;
  base::Pt end;
  for (const auto &item : line.items) {
    const auto *run = std::get_if<page::Run>(&item.what);
    if (run == nullptr)
      continue;
    base::Pt x = run->origin.x;
    for (const auto &glyph : run->glyphs) {
      const char c = run->text[glyph.cluster];
      if (in_number && !digit(c))
        return x;
      in_number = in_number || digit(c);
      x += glyph.advance;
    }
    end = x;
  }
  return in_number ? std::optional(end) : std::nullopt;
}

content::Inlines cell_inlines(const content::Cell &cell) {
  if (cell.sign.empty())
    return cell.text;
  return content::Inlines{content::Sign{cell.sign, cell.spoken}} + cell.text;
}

} // namespace strakebook::typeset
