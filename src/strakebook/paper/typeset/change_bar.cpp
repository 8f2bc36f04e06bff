#include "strakebook/paper/typeset/change_bar.h"

namespace strakebook::typeset {

page::Item change_bar(base::Pt top, base::Pt height, const Context &context) {
  const auto &meaning = style::meaning_style(context.style, "change-bar");
  const base::Pt left = -context.indent - style::measure(context.style, "change-bar-offset");
  const auto &tone = style::tone(context.style, meaning.fill.value_or("ink"));
  return filled_box({{left, top}, {style::measure(context.style, "change-bar"), height}}, colour(tone));
}

Fragment barred(Fragment part, bool changed, const Context &context) {
  if (changed)
    part.items.push_back(change_bar({}, part.size.height, context));
  return part;
}

page::Item place_bar(base::Point at, base::Pt size, const style::Style &style) {
  const auto &meaning = style::meaning_style(style, "change-bar");
  const base::Pt width = style::measure(style, "change-bar-place");
  const base::Pt left = at.x - size / 2 - style::measure(style, "label-pad") - width;
  return filled_box({{left, at.y - size / 2}, {width, size}}, colour(style::tone(style, meaning.fill.value_or("ink"))));
}

} // namespace strakebook::typeset
