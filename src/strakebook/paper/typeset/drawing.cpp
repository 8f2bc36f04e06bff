#include "strakebook/paper/typeset/drawing.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/drawing_axis.h"
#include "strakebook/paper/typeset/drawing_collision.h"
#include "strakebook/paper/typeset/drawing_ground.h"
#include "strakebook/paper/typeset/drawing_shapes.h"
#include "strakebook/paper/typeset/drawing_text.h"

namespace strakebook::typeset {
namespace {

using base::Pt;
using base::Rect;

/// Boxes of two texts may share this much: rounding of positions, not something an eye sees.
constexpr Pt overlap_allowed{0.2};

/// The box around the points of an outline.
Rect box_of(const content::Outline &outline, const DrawingScale &scale) {
  if (outline.points.empty()) return {};
  base::Point low = scale.place(outline.points.front()), high = low;
  for (const auto &point : outline.points) {
    const base::Point at = scale.place(point);
    low = {std::min(low.x, at.x), std::min(low.y, at.y)};
    high = {std::max(high.x, at.x), std::max(high.y, at.y)};
  }
  return {low, {high.x - low.x, high.y - low.y}};
}

/// Draws elements one after the other; every label has been placed before.
struct Drawer {
  const Brush &brush;
  const Context &context;
  std::vector<PlacedText> &labels;
  std::vector<PlacedText> &shown; ///< all texts that were drawn
  const std::vector<bool> &room;  ///< of each label: whether it is drawn
  std::size_t next = 0, shapes = 0;

  void operator()(const content::Outline &outline) {
    if (!outline.meaning.empty()) draw_outline(outline, brush);
    if (!outline.target.empty()) link(box_of(outline, brush.scale), outline.target);
  }
  void operator()(const content::Spot &spot) {
    const base::Point at = brush.scale.place(spot.at);
    if (!spot.id.empty()) brush.out.push_back(anchor(spot.id, at));
    if (spot.meaning.empty()) return;
    draw_spot(spot, brush);
    const Pt size = style::meaning_style(brush.style, spot.meaning).shape_size;
    if (spot.changed) brush.out.push_back(place_bar(at, size, brush.style));
    if (!spot.target.empty()) link({{at.x - size / 2, at.y - size / 2}, {size, size}}, spot.target);
  }
  void operator()(const content::Span &span) { draw_span(span, brush); }
  void operator()(const content::Axis &axis) {
    draw_axis(axis, brush);
    for (auto &text : placed_axis(axis, brush.scale, context)) show(std::move(text));
  }
  void operator()(const content::Label &label) {
    const std::size_t own = next++;
    if (!room[own]) return;
    PlacedText text = std::move(labels[own]);
    const Rect box = text.box;
    if (label.ground != content::Label::Ground::none) draw_ground(label.ground, box, brush);
    if (!label.id.empty()) brush.out.push_back(anchor(label.id, box.at));
    show(std::move(text));
    if (label.target.empty()) return;
    brush.out.push_back({label_context(label, own, context).tag, brush.id, page::Link{box, label.target, words_of(shown.back())}});
  }

  /// A shape that leads somewhere is a link of its own, said by the name of where it leads; labels have the keys before.
  void link(const Rect &box, const std::string &target) {
    const auto key = static_cast<std::int64_t>(labels.size() + shapes++);
    const std::string said = target.substr(target.find('/') + 1);
    brush.out.push_back({tagged(context, {.role = page::Role::link, .key = key, .spoken = said}).tag, brush.id, page::Link{box, target, said}});
  }

  void show(PlacedText text) {
    brush.out.insert(brush.out.end(), text.items.begin(), text.items.end());
    shown.push_back(std::move(text));
  }
};

std::string one_of(std::size_t count) {
  return count > 1 ? fmt::format(" (the first of {})", count) : std::string();
}

void report_touching(const std::vector<PlacedText> &texts, std::span<const Rect> boxes, const Context &context) {
  const auto touching = overlaps(boxes, overlap_allowed);
  if (touching.empty()) return;
  const auto &worst = touching.front();
  report(context, base::Code::label_collision,
         fmt::format("in a figure the label \"{}\" lies over \"{}\" by {:.1f} pt{}", words_of(texts[worst.first]),
                     words_of(texts[worst.second]), worst.by.v, one_of(touching.size())),
         fmt::format("labels that share at most {:.1f} pt", overlap_allowed.v),
         "give the figure more room in the layout, or show fewer labels in this lane");
}

void report_outside(const std::vector<PlacedText> &texts, std::span<const Rect> boxes, const Rect &area,
                    const Context &context) {
  const auto out = outside(boxes, area, overlap_allowed);
  if (out.empty()) return;
  report(context, base::Code::label_collision,
         fmt::format("in a figure the label \"{}\" leaves the figure{}", words_of(texts[out.front()]),
                     one_of(out.size())),
         "labels inside the figure and the room kept around it",
         "give the figure a wider margin in the layout, or a shorter label");
}

/// What a label that yields may not hide: the signs of the drawing.
std::vector<Rect> sign_boxes(const content::Drawing &drawing, const DrawingScale &scale, const style::Style &style) {
  std::vector<Rect> boxes;
  for (const auto &element : drawing.elements)
    if (const auto *spot = std::get_if<content::Spot>(&element); spot && !spot->meaning.empty()) {
      const Pt size = style::meaning_style(style, spot->meaning).shape_size;
      const base::Point at = scale.place(spot->at);
      boxes.push_back({{at.x - size / 2, at.y - size / 2}, {size, size}});
    }
  return boxes;
}

/// Finds which labels are drawn. One that yields must not touch a label placed before it, hide a sign or leave the figure;
/// where it would, it goes to its other place, if it has one and that is free, or is left out.
class Room {
public:
  Room(const content::Drawing &drawing, const DrawingScale &scale, const Context &context)
      : scale_(scale), context_(context), signs_(sign_boxes(drawing, scale, context.style)) {}

  bool find(const content::Label &label, PlacedText &text) {
    bool fits = free(label, text);
    if (!fits && label.yields && label.instead) {
      Context own = context_;
      if (!text.items.empty()) own.tag = text.items.front().tag;
      auto moved = placed_text(label.text, label.text_style,
                               {scale_.place(*label.instead), content::Anchor::centre, content::Level::middle, false}, own);
      fits = free(label, moved);
      if (fits) text = std::move(moved);
    }
    if (!fits && label.yields) return false;
    kept_.push_back(text.box);
    return true;
  }

private:
  bool free(const content::Label &label, const PlacedText &text) const {
    const Rect box = ground_box(label.ground, text.box, context_.style);
    const auto hides = [&](const Rect &other) { return touch(box, other, overlap_allowed); };
    return outside(std::span(&box, 1), {{}, scale_.size}, overlap_allowed).empty() && std::ranges::none_of(kept_, hides) &&
           std::ranges::none_of(signs_, hides);
  }

  const DrawingScale &scale_;
  const Context &context_;
  std::vector<Rect> signs_, kept_;
};

std::vector<bool> with_room(const content::Drawing &drawing, std::vector<PlacedText> &labels, const DrawingScale &scale,
                            const Context &context) {
  std::vector<bool> drawn;
  Room room(drawing, scale, context);
  for (const auto &element : drawing.elements)
    if (const auto *label = std::get_if<content::Label>(&element)) {
      const bool found = room.find(*label, labels[drawn.size()]);
      drawn.push_back(found);
    }
  return drawn;
}

void check_labels(const std::vector<PlacedText> &texts, base::Size size, const Context &context) {
  if (texts.empty()) return;
  std::vector<Rect> boxes;
  boxes.reserve(texts.size());
  for (const auto &text : texts) boxes.push_back(text.box);
  report_touching(texts, boxes, context);
  report_outside(texts, boxes, {{}, size}, context);
}

} // namespace

Fragment draw_at(const content::Drawing &drawing, const DrawingScale &scale, const Context &context,
                 const std::string &id) {
  Fragment fragment;
  fragment.size = scale.size;
  fragment.items.reserve(drawing.elements.size());
  Context own = tagged(context, {.role = page::Role::figure, .spoken = drawing.spoken});
  own.id = id;
  auto labels = placed_labels(drawing, scale, own);
  const auto room = with_room(drawing, labels, scale, own);
  std::vector<PlacedText> shown;
  const Brush brush{context.style, scale, id, fragment.items, own.tag};
  Drawer drawer{brush, own, labels, shown, room};
  for (const auto &element : drawing.elements) std::visit(drawer, element);
  check_labels(shown, scale.size, context);
  return fragment;
}

Fragment draw(const content::Drawing &drawing, Pt width, const Context &context, const std::string &id) {
  return draw_at(drawing, scaled(drawing, context.style, width), context, id);
}

} // namespace strakebook::typeset
