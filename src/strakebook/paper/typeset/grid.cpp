#include "strakebook/paper/typeset/grid.h"

#include <algorithm>
#include <cmath>

namespace strakebook::typeset {
namespace {

constexpr double tolerance = 1e-6; // points: heights are sums of doubles

base::Pt up_to_half_steps(base::Pt height, const style::Style &style) {
  const double half = style.grid.v / 2;
  return half > 0 ? base::Pt{std::ceil(height.v / half - tolerance) * half} : height;
}

struct OnGrid {
  const style::Style &style;

  bool text(const std::string &name) const { return style::text_style(style, name).on_grid; }
  bool operator()(const content::Paragraph &paragraph) const { return text(paragraph.text_style); }
  bool operator()(const content::List &list) const { return text(list.text_style); }
  bool operator()(const content::Columns &columns) const {
    return std::any_of(columns.cells.begin(), columns.cells.end(), [&](const auto &cell) {
      return !cell.empty() && begins_on_grid(cell.front(), style);
    });
  }
  bool operator()(const content::Together &together) const {
    return !together.blocks.empty() && begins_on_grid(together.blocks.front(), style);
  }
  template <class Other> bool operator()(const Other &) const { return false; }
};

} // namespace

bool begins_on_grid(const content::Block &block, const style::Style &style) {
  return std::visit(OnGrid{style}, block.what);
}

base::Pt down_to_grid(base::Pt used, const Region &region, const style::Style &style) {
  const base::Pt from_top = region.full_height - region.height_left + used;
  return std::max(base::Pt{}, up_to_half_steps(from_top, style) - from_top);
}

base::Pt gap_on_grid(base::Pt gap, const style::TextStyle &text, const style::Style &style) {
  return text.on_grid ? up_to_half_steps(gap, style) : gap;
}

Fragment lowered(Fragment fragment, base::Pt by) {
  if (by.v <= 0)
    return fragment;
  for (auto &item : fragment.items)
    translate(item, {{}, by});
  fragment.size.height += by;
  if (fragment.first_baseline.v > 0)
    fragment.first_baseline += by;
  return fragment;
}

} // namespace strakebook::typeset
