#include "strakebook/paper/content/said.h"

#include <algorithm>
#include <charconv>

namespace strakebook::content {
namespace {

// Characters that no text holds: parts that are not the same never run together to the same text.
constexpr char part_end = '\x1f', group_end = '\x1e';

std::string number(double value) {
  char digits[32];
  const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
  return std::string(digits, end);
}

/// Puts one part after the other.
struct Writer {
  std::string text;

  Writer &operator<<(const std::string &part) {
    text += part;
    text += part_end;
    return *this;
  }
  Writer &operator<<(int part) { return *this << std::to_string(part); }
  Writer &operator<<(const XY &at) { return *this << number(at.x) << number(at.y); }
  Writer &operator<<(Emphasis emphasis) { return *this << static_cast<int>(emphasis); }
  template <class T> Writer &each(const std::vector<T> &parts) {
    for (const auto &part : parts)
      *this << said(part);
    text += group_end;
    return *this;
  }
};

struct SayInline {
  Writer &to;
  void operator()(const Text &text) const { to << "text" << text.emphasis << text.text; }
  void operator()(const Reference &reference) const {
    to << "to" << reference.target << static_cast<int>(reference.form) << reference.shown << reference.emphasis;
  }
  void operator()(const Sign &sign) const { to << "sign" << sign.meaning << sign.spoken; }
  void operator()(const LineBreak &) const { to << "line"; }
};

struct SayElement {
  Writer &to;
  void operator()(const Outline &outline) const {
    to << "outline" << outline.meaning << outline.target << outline.closed;
    if (outline.target.empty())
      for (const auto &point : outline.points)
        to << point;
  }
  void operator()(const Spot &spot) const {
    to << "spot" << spot.meaning << spot.tone << spot.id << spot.target;
    if (spot.id.empty() && spot.target.empty())
      to << spot.at;
  }
  void operator()(const Label &label) const {
    to << "label" << said(label.text) << label.id << label.target;
    if (label.id.empty() && label.target.empty())
      to << label.at;
  }
  void operator()(const Span &span) const { to << "span" << span.meaning << static_cast<int>(span.ends) << span.from << span.to; }
  void operator()(const Axis &axis) const {
    to << "axis" << axis.title << static_cast<int>(axis.side);
    for (const auto &[at, shown] : axis.numbers)
      to << number(at) << shown;
  }
};

struct SayBlock {
  Writer &to;
  void operator()(const Heading &heading) const { to << "heading" << heading.level << said(heading.text); }
  void operator()(const Paragraph &paragraph) const { to << "paragraph" << paragraph.text_style << paragraph.bar << said(paragraph.text); }
  void operator()(const KeyValues &keys) const { (to << "keys" << keys.columns).each(keys.entries); }
  void operator()(const List &list) const { (to << "list" << list.numbered).each(list.items); }
  void operator()(const Table &table) const {
    to << "table" << said(table.caption);
    for (const auto &column : table.columns)
      to << column.head << column.unit;
    for (const auto &group : table.groups)
      (to << group.id << said(group.head)).each(group.rows);
    to.each(table.notes);
  }
  void operator()(const Figure &figure) const { (to << "figure" << said(figure.caption)).each(figure.panels).each(figure.notes); }
  void operator()(const Photo &photo) const {
    to << "photo" << (photo.image ? photo.image->digest : std::string()) << photo.number << said(photo.placeholder) << said(photo.caption);
    if (photo.strip)
      to << said(*photo.strip);
  }
  void operator()(const Columns &columns) const {
    to << "columns";
    for (const auto &cell : columns.cells)
      to.each(cell);
  }
  void operator()(const Together &together) const { (to << "together").each(together.blocks); }
  void operator()(const Rule &rule) const { to << "rule" << rule.meaning; }
  void operator()(const Space &space) const { to << "space" << space.measure; }
  void operator()(const PageBreak &) const { to << "page"; }
  void operator()(const Contents &contents) const { to << "contents" << static_cast<int>(contents.of); }
  void operator()(const EndMark &) const { to << "end"; }
};

bool letter_or_figure(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

} // namespace

std::string said(const Inlines &text) {
  Writer to;
  for (const auto &part : text)
    std::visit(SayInline{to}, part);
  return std::move(to.text);
}

std::string said(const Element &element) {
  Writer to;
  std::visit(SayElement{to}, element);
  return std::move(to.text);
}

std::string said(const Drawing &drawing) {
  Writer to;
  return std::move((to << drawing.spoken).each(drawing.elements).text);
}

std::string said(const Cell &cell) {
  Writer to;
  to << said(cell.text) << cell.sign << cell.spoken << (cell.glyph ? said(*cell.glyph) : std::string());
  return std::move(to.text);
}

std::string said(const Row &row) {
  Writer to;
  return std::move((to << row.id).each(row.cells).text);
}

std::string said(const KeyValues::Entry &entry) {
  Writer to;
  return std::move((to << entry.label << entry.id << said(entry.value)).text);
}

std::string said(const Figure::Panel &panel) {
  Writer to;
  return std::move((to << panel.id << said(panel.title) << said(panel.title_right) << said(panel.drawing)).text);
}

std::string said(const Block &block) {
  Writer to;
  to << block.id;
  std::visit(SayBlock{to}, block.what);
  return std::move(to.text);
}

bool says_anything(const Cell &cell) {
  if (cell.glyph || !cell.sign.empty())
    return true;
  return std::ranges::any_of(cell.text, [](const Inline &part) {
    const auto *text = std::get_if<Text>(&part);
    return text ? std::ranges::any_of(text->text, letter_or_figure) : !std::holds_alternative<LineBreak>(part);
  });
}

} // namespace strakebook::content
