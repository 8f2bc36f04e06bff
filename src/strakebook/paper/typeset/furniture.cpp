#include "strakebook/paper/typeset/furniture.h"

#include <algorithm>
#include <utility>

#include "strakebook/base/text.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

const TextOptions options{true, {}};

/// Left words take what the right ones leave, in as many lines as they need; the last lines share one
/// baseline.
struct Line {
  std::vector<Fragment> left;
  Fragment right;

  base::Pt height(const style::TextStyle &style) const {
    return style.leading * static_cast<double>(std::max<std::size_t>(1, left.size()));
  }
};

Line set_furniture(const content::Inlines &left, const content::Inlines &right, const style::TextStyle &style,
                   base::Pt width, const Context &context) {
  auto words = set_line(right, style, options, context);
  const base::Pt taken =
      words.size.width.v > 0 ? words.size.width + style::measure(context.style, "furniture-gap") : base::Pt{};
  return {set_lines(left, style, width - taken, options, context), std::move(words)};
}

void anonymous(std::vector<page::Item> &items, std::size_t from) {
  for (std::size_t i = from; i < items.size(); ++i)
    if (!std::holds_alternative<page::Link>(items[i].what))
      items[i].id.clear();
}

void add_line(page::Page &page, Line line, base::Point last_baseline, base::Pt width) {
  const std::size_t before = page.items.size();
  const std::size_t count = line.left.size();
  for (std::size_t i = 0; i < count; ++i) {
    const base::Pt up = line.left[i].size.height * static_cast<double>(count - 1 - i);
    append(page.items, std::move(line.left[i]),
           {last_baseline.x, last_baseline.y - up - line.right.first_baseline});
  }
  const base::Pt right_edge = last_baseline.x + width - line.right.size.width;
  append(page.items, std::move(line.right), {right_edge, last_baseline.y - line.right.first_baseline});
  anonymous(page.items, before);
}

content::Inlines page_of_pages(const content::Furniture &furniture, int page, int pages) {
  const base::Fill fills[] = {{"page", std::to_string(page)}, {"pages", std::to_string(pages)}};
  return content::plain(base::filled(furniture.foot_right, fills));
}

/// The frames of head and foot are what the body leaves between the margins, above and below.
page::Frame head_frame(const style::PageMaster &look) {
  return {"head", {{look.left, {}}, {style::body_width(look), look.top}}};
}

page::Frame foot_frame(const style::PageMaster &look) {
  return {"foot", {{look.left, look.sheet.height - look.bottom}, {style::body_width(look), look.bottom}}};
}

void check_room(const Line &line, const style::TextStyle &style, base::Pt room, const char *place,
                const Context &context) {
  if (line.height(style).v > room.v + 1e-6)
    report(context, base::Code::block_too_large,
           std::string("the running ") + place + " has more lines than its margin holds",
           "words that fit between the margins", "fewer words");
}

} // namespace

void add_furniture(SetPage &set, const content::Furniture &furniture, int pages, const Context &context) {
  const auto &look = style::master(context.style, set.master);
  const base::Pt width = style::body_width(look);
  auto body = std::move(set.page.items);
  set.page.items.clear();
  const auto &head_style = style::text_style(context.style, "furniture-head");
  const auto &foot_style = style::text_style(context.style, "furniture-foot");
  auto head = set_furniture(furniture.head_left, furniture.head_right, head_style, width, context);
  auto foot = set_furniture(furniture.foot_left, page_of_pages(furniture, context.page, pages), foot_style,
                            width, context);
  check_room(head, head_style, look.head_baseline, "head", context);
  check_room(foot, foot_style, look.bottom - look.foot_baseline + foot_style.leading, "foot", context);
  add_line(set.page, std::move(head), {look.left, look.head_baseline}, width);
  const auto &meaning = style::meaning_style(context.style, "furniture-rule");
  set.page.items.push_back(rule(look.left, look.left + width, look.head_rule, meaning.stroke_width,
                                colour(style::tone(context.style, meaning.stroke.value_or("ink"))),
                                meaning.dash));
  std::move(body.begin(), body.end(), std::back_inserter(set.page.items));
  add_line(set.page, std::move(foot), {look.left, look.sheet.height - look.foot_baseline}, width);
  set.page.frames.push_back(head_frame(look));
  set.page.frames.push_back(foot_frame(look));
}

} // namespace strakebook::typeset
