#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/line.h"

namespace strakebook::typeset {
namespace {

std::string page_number(const ContentsLine &line, const Context &context) {
  const auto it = context.places.pages.find(line.target);
  return it == context.places.pages.end() ? "00" : std::to_string(it->second);
}

/// Number, words, page; sub-sections are indented to stand under the words of their section.
Fragment set_contents_line(const ContentsLine &line, base::Pt width, const Context &context) {
  const TextOptions figures{page::Role::toc_item, true, {}};
  const bool section = line.level == 1;
  const base::Pt indent = section ? base::Pt{} : style::measure(context.style, "contents-number");
  const base::Pt words =
      indent + style::measure(context.style, section ? "contents-number" : "contents-sub-number");
  auto number = set_line(content::plain(line.number), style::text_style(context.style, "contents-number"),
                         figures, context);
  auto page = set_line(content::plain(page_number(line, context)),
                       style::text_style(context.style, "contents-page"), figures, context);
  const base::Pt page_left = width - page.size.width;
  const base::Pt gap = style::measure(context.style, "heading-number-gap");
  auto title = set_text(line.text, style::text_style(context.style, section ? "contents-1" : "contents-2"),
                        page_left - gap - words, {page::Role::toc_item, false, {}}, moved(context, words));
  Fragment shifted;
  shifted.size = number.size;
  shifted.first_baseline = number.first_baseline;
  append(shifted.items, std::move(number), {indent, {}});
  auto row = beside(beside(std::move(shifted), std::move(title), words), std::move(page), page_left);
  row.size.width = width;
  row.items.push_back({page::Role::link, context.id, page::Link{{{}, row.size}, line.target}});
  return row;
}

} // namespace

Outcome lay_contents(const content::Contents &contents, const Resume &from, const Region &region,
                     const Context &context) {
  std::vector<const ContentsLine *> lines;
  for (const auto &line : context.contents)
    if (line.level <= contents.depth)
      lines.push_back(&line);
  const auto make = [&](std::size_t i) {
    auto row = set_contents_line(*lines[i], region.width, context);
    const bool leaves_group = i > from.index && lines[i]->level == 1 && lines[i - 1]->level > 1;
    if (!leaves_group)
      return row;
    const base::Pt gap = style::measure(context.style, "contents-group-gap");
    Fragment lower;
    lower.size = {row.size.width, row.size.height + gap};
    lower.first_baseline = row.first_baseline + gap;
    append(lower.items, std::move(row), {{}, gap});
    return lower;
  };
  return split_rows(lines.size(), {}, make, from, region);
}

} // namespace strakebook::typeset
