#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/grid.h"
#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/signs.h"
#include "strakebook/paper/typeset/spacing.h"

namespace strakebook::typeset {
namespace {

/// "heading-1-number" beside "heading-1"; a heading with a style of its own may do without.
const style::TextStyle &number_style(const content::Heading &heading, const style::Style &style) {
  const std::string base =
      heading.text_style.empty() ? "heading-" + std::to_string(heading.level) : heading.text_style;
  const auto it = style.text.find(base + "-number");
  return it != style.text.end() ? it->second : heading_style(heading, style);
}

bool stands_at_full_height(const style::MeaningStyle &meaning) {
  return meaning.shape == style::Shape::caution_bar || meaning.shape == style::Shape::none;
}

/// The bar at the left of a whole paragraph, as wide as its meaning's stroke.
void add_bar(Fragment &fragment, const style::MeaningStyle &meaning, const Context &context) {
  const auto &tone = style::tone(context.style, meaning.fill.value_or(meaning.stroke.value_or("ink")));
  fragment.items.insert(fragment.items.begin(),
                        filled_box({{}, {meaning.stroke_width, fragment.size.height}}, colour(tone)));
}

Fragment *fragment_of(Outcome &outcome) {
  if (auto *whole = std::get_if<Whole>(&outcome))
    return &whole->fragment;
  if (auto *part = std::get_if<Part>(&outcome))
    return &part->fragment;
  return nullptr;
}

Outcome lay_barred(const content::Paragraph &paragraph, const style::MeaningStyle &meaning,
                   const Resume &from, const Region &region, const Context &context) {
  const base::Pt indent = style::measure(context.style, "bar-indent");
  auto lines = set_lines(paragraph.text, style::text_style(context.style, paragraph.text_style),
                         region.width - indent, {}, moved(context, indent));
  for (auto &line : lines)
    for (auto &item : line.items)
      translate(item, {indent, {}});
  auto outcome = split_lines(std::move(lines), from, region);
  if (auto *fragment = fragment_of(outcome))
    add_bar(*fragment, meaning, context);
  return outcome;
}

std::string item_label(const content::List &list, std::size_t index) {
  return list.numbered ? std::to_string(index + 1) + "." : "\xE2\x80\xA2";
}

std::vector<Fragment> item_lines(const content::List &list, std::size_t index, const Region &region,
                                 const Context &context) {
  const auto &style = style::text_style(context.style, list.text_style);
  const base::Pt indent = style::measure(context.style, "list-indent");
  const Context own = tagged(context, {.role = page::Role::list_item, .key = static_cast<std::int64_t>(index)});
  auto lines = set_lines(list.items[index], style, region.width - indent, {},
                         moved(tagged(own, {.role = page::Role::list_body}), indent));
  for (auto &line : lines)
    for (auto &item : line.items)
      translate(item, {indent, {}});
  if (!lines.empty()) {
    auto label = set_line(content::plain(item_label(list, index)), style, {true, {}},
                          tagged(own, {.role = page::Role::label}));
    auto &items = lines.front().items;
    items.insert(items.begin(), label.items.begin(), label.items.end());
  }
  return lines;
}

/// A list does not leave its first line alone at the foot of a page.
bool one_line_alone(const Fragment &set, std::size_t items, const content::List &list, const Region &region,
                    const Context &context) {
  const auto leading = style::text_style(context.style, list.text_style).leading;
  return items == 1 && !region.empty_page() && set.size.height.v < 2 * leading.v - 1e-6;
}

} // namespace

Outcome lay_heading(const content::Heading &heading, const Region &region, const Context &context) {
  const TextOptions options;
  const auto &style = heading_style(heading, context.style);
  if (heading.number.empty())
    return whole_or_next(set_text(heading.text, style, region.width, options, context), region, "a heading");
  auto number =
      set_line(content::plain(heading.number), number_style(heading, context.style), options, context);
  const base::Pt left = number.size.width + style::measure(context.style, "heading-number-gap");
  auto words = set_text(heading.text, style, region.width - left, options, moved(context, left));
  return whole_or_next(beside(std::move(number), std::move(words), left), region, "a heading");
}

Outcome lay_paragraph(const content::Paragraph &paragraph, const Resume &from, const Region &region,
                      const Context &context) {
  const auto &style = style::text_style(context.style, paragraph.text_style);
  if (paragraph.bar.empty())
    return split_lines(set_lines(paragraph.text, style, region.width, {}, context), from, region);
  const auto &meaning = style::meaning_style(context.style, paragraph.bar);
  if (stands_at_full_height(meaning))
    return lay_barred(paragraph, meaning, from, region, context);
  const content::Inlines with_sign = content::Inlines{content::Sign{paragraph.bar, {}}} + paragraph.text;
  return split_lines(set_lines(with_sign, style, region.width, {}, context), from, region);
}

Outcome lay_list(const content::List &list, const Resume &from, const Region &region,
                 const Context &context) {
  const base::Pt gap = gap_on_grid(style::measure(context.style, "list-gap"),
                                   style::text_style(context.style, list.text_style), context.style);
  Fragment set;
  Resume line = from.inner.empty() ? Resume{} : from.inner.front();
  for (std::size_t i = from.index; i < list.items.size(); ++i, line = {}) {
    const base::Pt used = set.items.empty() ? base::Pt{} : set.size.height + gap;
    auto outcome = split_lines(item_lines(list, i, region, context), line,
                               {region.width, region.height_left - used, region.full_height});
    if (std::holds_alternative<NextPage>(outcome))
      return set.items.empty() || one_line_alone(set, i, list, region, context)
                 ? std::move(outcome)
                 : Outcome{Part{std::move(set), {i, {line}}}};
    if (auto *fragment = fragment_of(outcome))
      stack(set, std::move(*fragment), gap);
    if (auto *part = std::get_if<Part>(&outcome))
      return Part{std::move(set), {i, {part->rest}}};
  }
  if (set.items.empty())
    return Nothing{};
  return Whole{std::move(set)};
}

Outcome lay_end_mark(const content::EndMark &mark, const Region &region, const Context &context) {
  const auto &style = style::text_style(context.style, "end-mark");
  return whole_or_next(set_text(mark.text, style, region.width, {}, context), region, "the end mark");
}

Outcome lay_rule(const content::Rule &line, const Region &region, const Context &context) {
  const auto &meaning = style::meaning_style(context.style, line.meaning);
  Fragment set;
  set.size = {region.width, meaning.stroke_width};
  const auto ink = colour(style::tone(context.style, meaning.stroke.value_or("ink")));
  set.items.push_back(
      rule({}, region.width, meaning.stroke_width / 2, meaning.stroke_width, ink, meaning.dash));
  return whole_or_next(std::move(set), region, "a rule");
}

} // namespace strakebook::typeset
