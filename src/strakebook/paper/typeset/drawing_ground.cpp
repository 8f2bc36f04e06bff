#include "strakebook/paper/typeset/drawing_ground.h"

#include <vector>

#include "strakebook/paper/typeset/drawing_path.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using base::Rect;
using Ground = content::Label::Ground;

Rect grown(const Rect &box, Pt by) {
  return {{box.at.x - by, box.at.y - by}, {box.size.width + by * 2, box.size.height + by * 2}};
}

bool pointed(Ground ground) { return ground == Ground::flag_left || ground == Ground::flag_right; }

std::vector<Point> corners(Ground ground, const Rect &box) {
  const Pt left = box.at.x, top = box.at.y, right = box.right(), bottom = box.bottom(), half = box.size.height / 2;
  switch (ground) {
  case Ground::flag_left: return {{left + half, top}, {right, top}, {right, bottom}, {left + half, bottom}, {left, top + half}};
  case Ground::flag_right: return {{left, top}, {right - half, top}, {right, top + half}, {right - half, bottom}, {left, bottom}};
  case Ground::flag:
  case Ground::chip:
  case Ground::none: break;
  }
  return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

} // namespace

Rect ground_box(Ground ground, const Rect &letters, const style::Style &style) {
  if (ground == Ground::none)
    return letters;
  Rect box = grown(letters, style::measure(style, "chip-pad"));
  if (!pointed(ground))
    return box;
  const Pt point = box.size.height / 2;
  box.size.width += point;
  if (ground == Ground::flag_left)
    box.at.x = box.at.x - point;
  return box;
}

void draw_ground(Ground ground, const Rect &letters, const Brush &brush) {
  const auto &meaning = style::meaning_style(brush.style, ground == Ground::chip ? "chip" : "flag");
  page::Path path = polyline(corners(ground, ground_box(ground, letters, brush.style)), true);
  path.fill = fill_of(meaning, brush.style);
  path.stroke = stroke_of(meaning, brush.style);
  brush.out.push_back({brush.tag, brush.id, std::move(path)});
}

} // namespace strakebook::typeset
