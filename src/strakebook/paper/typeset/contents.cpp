#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/line.h"
#include "strakebook/paper/typeset/outline.h"

namespace strakebook::typeset {
namespace {

std::string page_number(const ContentsLine &line, const Context &context) {
  const auto it = context.places.pages.find(line.target);
  return it == context.places.pages.end() ? "00" : std::to_string(it->second);
}

using Lines = std::vector<const ContentsLine *>;

/// Number, words, page, all of them the link that is context.tag; sub-sections are indented to stand under the words of their
/// section.
Fragment set_contents_line(const ContentsLine &line, base::Pt width, const Context &context) {
  const TextOptions figures{true, {}};
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
                        page_left - gap - words, {}, moved(context, words));
  Fragment shifted;
  shifted.size = number.size;
  shifted.first_baseline = number.first_baseline;
  append(shifted.items, std::move(number), {indent, {}});
  auto row = beside(beside(std::move(shifted), std::move(title), words), std::move(page), page_left);
  row.size.width = width;
  const std::string said = line.number + " " + plain_text(line.text, context);
  row.items.push_back({context.tag, context.id, page::Link{{{}, row.size}, line.target, said}});
  return row;
}

const TextOptions listed{true, {}};

base::Pt widest_label(const Lines &lines, const Context &context) {
  const auto &style = style::text_style(context.style, "contents-listed");
  base::Pt widest;
  for (const auto *line : lines)
    widest = std::max(widest, line_width(content::plain(line->number), style, listed, context));
  return widest;
}

/// Label, title and page of a table or figure.
Fragment set_listed_line(const ContentsLine &line, base::Pt width, base::Pt words, const Context &context) {
  const auto &style = style::text_style(context.style, "contents-listed");
  auto label = set_line(content::plain(line.number), style, listed, context);
  auto page = set_line(content::plain(page_number(line, context)), style, listed, context);
  const base::Pt page_left = width - page.size.width;
  const base::Pt gap = style::measure(context.style, "heading-number-gap");
  const auto caption = content::plain(caption_title(line, context));
  auto title = set_text(caption, style, page_left - gap - words, listed, moved(context, words));
  auto row = beside(beside(std::move(label), std::move(title), words), std::move(page), page_left);
  row.size.width = width;
  const std::string said = line.number + " " + plain_text(caption, context);
  row.items.push_back({context.tag, context.id, page::Link{{{}, row.size}, line.target, said}});
  return row;
}

/// The link that a line is. Sub-sections are a list inside the list, after the section they belong to.
Context link_context(const Lines &lines, std::size_t i, const Context &context) {
  const auto nested = [&](std::size_t k) { return lines[k]->kind == content::Contents::Of::headings && lines[k]->level > 1; };
  std::size_t section = i;
  while (section > 0 && nested(section))
    --section;
  const page::Tag inner{.role = page::Role::contents, .key = static_cast<std::int64_t>(section)};
  const Context list = nested(i) ? tagged(context, inner) : context;
  const page::Tag item{.role = page::Role::contents_item, .key = static_cast<std::int64_t>(i)};
  return tagged(tagged(tagged(list, item), {.role = page::Role::reference}), {.role = page::Role::link});
}

/// Two columns, read down the left one first; `set` makes a line of a width in its context.
template <class Set>
Outcome lay_abreast(const Lines &lines, const Set &set, const Resume &from, const Region &region, const Context &context) {
  const base::Pt gutter = style::measure(context.style, "column-gutter");
  const base::Pt width = (region.width - gutter) / 2, right = width + gutter;
  const std::size_t rows = (lines.size() + 1) / 2;
  Fragment both;
  for (std::size_t c = 0; c < 2; ++c) {
    const base::Pt at = c == 0 ? base::Pt{} : right;
    Fragment column;
    for (std::size_t i = c * rows; i < std::min(lines.size(), (c + 1) * rows); ++i)
      stack(column, set(*lines[i], width, moved(link_context(lines, i, context), at)), {});
    both.size = {region.width, std::max(both.size.height, column.size.height)};
    append(both.items, std::move(column), {at, {}});
  }
  if (from.at_start() && region.holds(both.size.height) && !lines.empty())
    return Whole{std::move(both)};
  // Over a page end line by line, so that what is read first stands on the first page.
  const auto make = [&](std::size_t i) {
    auto row = set(*lines[i], width, link_context(lines, i, context));
    return i + rows < lines.size() ? beside(std::move(row), set(*lines[i + rows], width, moved(link_context(lines, i + rows, context), right)), right) : row;
  };
  return split_rows(rows, {}, make, from, region);
}

Lines chosen(const content::Contents &contents, const Context &context) {
  Lines lines;
  const bool headings = contents.of == content::Contents::Of::headings;
  for (const auto &line : context.contents)
    if (line.kind == contents.of && (!headings || line.level <= contents.depth))
      lines.push_back(&line);
  return lines;
}

} // namespace

Outcome lay_contents(const content::Contents &contents, const Resume &from, const Region &region,
                     const Context &context) {
  const Lines lines = chosen(contents, context);
  if (contents.of == content::Contents::Of::headings)
    return lay_abreast(lines, set_contents_line, from, region, context);
  const base::Pt words = widest_label(lines, context) + style::measure(context.style, "heading-number-gap");
  const auto set = [&](const ContentsLine &line, base::Pt width, const Context &own) { return set_listed_line(line, width, words, own); };
  return lay_abreast(lines, set, from, region, context);
}

} // namespace strakebook::typeset
