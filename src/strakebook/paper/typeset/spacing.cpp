#include "strakebook/paper/typeset/spacing.h"

#include <algorithm>
#include <string>

namespace strakebook::typeset {
namespace {

struct Finder {
  const style::Style &style;

  Spacing of(const style::TextStyle &text) const {
    return {text.space_before, text.space_after, text.keep_with_next};
  }
  Spacing both(std::string_view measure) const {
    const auto gap = style::measure(style, measure);
    return {gap, gap, false};
  }

  Spacing operator()(const content::Heading &heading) const {
    auto found = of(heading_style(heading, style));
    found.keep_with_next = true;
    return found;
  }
  Spacing operator()(const content::Paragraph &paragraph) const {
    return of(style::text_style(style, paragraph.text_style));
  }
  Spacing operator()(const content::List &list) const {
    return of(style::text_style(style, list.text_style));
  }
  Spacing operator()(const content::Table &table) const {
    const auto &look = style::table_style(style, table.style);
    return {look.space_before, look.space_after, false};
  }
  Spacing operator()(const content::Columns &columns) const {
    Spacing widest;
    for (const auto &cell : columns.cells) {
      auto inner = of_blocks(cell);
      if (!cell.empty() && std::holds_alternative<content::Rule>(cell.front().what))
        inner.before = {}; // the rule is the top of its cell, as a table's is
      widest = {std::max(widest.before, inner.before), std::max(widest.after, inner.after),
                widest.keep_with_next || inner.keep_with_next};
    }
    return widest;
  }
  Spacing operator()(const content::Together &together) const { return of_blocks(together.blocks); }
  Spacing operator()(const content::KeyValues &) const { return both("block-gap"); }
  Spacing operator()(const content::Figure &) const { return both("figure-gap"); }
  Spacing operator()(const content::Photo &) const { return both("photo-gap"); }
  Spacing operator()(const content::Rule &) const { return both("rule-gap"); }
  Spacing operator()(const content::Contents &) const { return both("block-gap"); }
  Spacing operator()(const content::EndMark &) const { return of(style::text_style(style, "end-mark")); }
  Spacing operator()(const content::Space &) const { return {}; }
  Spacing operator()(const content::PageBreak &) const { return {}; }

  Spacing of_blocks(const std::vector<content::Block> &blocks) const {
    if (blocks.empty())
      return {};
    const auto last = spacing(blocks.back(), style);
    return {spacing(blocks.front(), style).before, last.after, last.keep_with_next};
  }
};

} // namespace

Spacing spacing(const content::Block &block, const style::Style &style) {
  return std::visit(Finder{style}, block.what);
}

const style::TextStyle &heading_style(const content::Heading &heading, const style::Style &style) {
  if (!heading.text_style.empty())
    return style::text_style(style, heading.text_style);
  return style::text_style(style, "heading-" + std::to_string(heading.level));
}

} // namespace strakebook::typeset
