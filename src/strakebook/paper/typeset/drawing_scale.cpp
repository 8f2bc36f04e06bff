#include "strakebook/paper/typeset/drawing_scale.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strakebook::typeset {
namespace {

using Rule = content::Scale::Rule;

base::Pt pad(const style::Style &style, const std::string &name) {
  return name.empty() ? base::Pt{} : style::measure(style, name);
}

double points_to_fill(base::Pt room, double from, double to, double most) {
  if (from == to) throw std::invalid_argument("a drawing fills its area with an empty range of data");
  if (room.v <= 0) throw std::invalid_argument("a drawing has no room left between its pads");
  const double points = room.v / (to - from);
  return std::copysign(std::min(std::abs(points), most), points);
}

double points_named(const style::Style &style, const content::Scale &scale, double from, double to) {
  const double points = style::measure(style, scale.measure).v;
  return to < from ? -points : points;
}

double points_along_x(const content::Drawing &d, const style::Style &style, base::Pt room, double most) {
  if (d.x.rule == Rule::as_x) throw std::invalid_argument("the x scale of a drawing is given as the x scale");
  return d.x.rule == Rule::fill ? points_to_fill(room, d.x0, d.x1, most) : points_named(style, d.x, d.x0, d.x1);
}

double points_along_y(const content::Drawing &d, const style::Style &style, double points_x, double most) {
  if (d.y.rule == Rule::fill) return points_to_fill(style::measure(style, d.y.measure), d.y0, d.y1, most);
  if (d.y.rule == Rule::named) return points_named(style, d.y, d.y0, d.y1);
  return std::copysign(points_x, d.y1 - d.y0);
}

} // namespace

DrawingScale scaled(const content::Drawing &d, const style::Style &style, base::Pt width, ScaleLimit limit) {
  const base::Pt left = pad(style, d.pad_left), right = pad(style, d.pad_right);
  const base::Pt top = pad(style, d.pad_top), bottom = pad(style, d.pad_bottom);
  DrawingScale scale;
  scale.x0 = d.x0;
  scale.y0 = d.y0;
  scale.points_x = points_along_x(d, style, width - left - right, limit.x);
  scale.points_y = points_along_y(d, style, scale.points_x, limit.y);
  scale.area = {{left, top}, {{(d.x1 - d.x0) * scale.points_x}, {(d.y1 - d.y0) * scale.points_y}}};
  scale.size = {scale.area.right() + right, scale.area.bottom() + bottom};
  return scale;
}

ScaleLimit common_limit(std::span<const content::Drawing *const> drawings, std::span<const base::Pt> widths,
                        const style::Style &style) {
  ScaleLimit limit;
  for (std::size_t i = 0; i < drawings.size(); ++i) {
    const auto alone = scaled(*drawings[i], style, widths[i]);
    if (drawings[i]->x.rule == Rule::fill) limit.x = std::min(limit.x, std::abs(alone.points_x));
    if (drawings[i]->y.rule == Rule::fill) limit.y = std::min(limit.y, std::abs(alone.points_y));
  }
  return limit;
}

} // namespace strakebook::typeset
