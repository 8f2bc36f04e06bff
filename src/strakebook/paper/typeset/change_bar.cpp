#include "strakebook/paper/typeset/change_bar.h"

namespace strakebook::typeset {

page::Item change_bar(base::Pt top, base::Pt height, const Context &context) {
  const auto &meaning = style::meaning_style(context.style, "change-bar");
  const base::Pt left = -context.indent - style::measure(context.style, "change-bar-offset");
  const auto &tone = style::tone(context.style, meaning.fill.value_or("ink"));
  return filled_box({{left, top}, {style::measure(context.style, "change-bar"), height}}, colour(tone));
}

} // namespace strakebook::typeset
