#include "strakebook/paper/typeset/signs.h"

#include <array>

#include "strakebook/paper/typeset/drawing_path.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using style::Shape;

/// Shares of the height s of a sign: the circle and the triangle are drawn a little smaller than the square, so that
/// the three look alike in size.
constexpr double circle_share = 0.86;
constexpr double triangle_share = 0.9;
/// Distance of the two lines of a double line, in widths of one.
constexpr double double_spacing = 4;

struct Pen {
  const style::MeaningStyle &meaning;
  const style::Style &style;
  std::optional<style::Tone> override_tone;
  const page::TagPath &tag;
  const std::string &id;
  std::vector<page::Item> &out;

  std::optional<page::Colour> fill() const {
    return override_tone ? std::optional(colour(*override_tone)) : fill_of(meaning, style);
  }
  void add(page::Path path) const { out.push_back({tag, id, std::move(path)}); }
  void filled(page::Path path) const {
    path.fill = fill();
    path.stroke = stroke_of(meaning, style);
    if (path.fill || path.stroke) add(std::move(path));
  }
  void stroked(page::Path path) const {
    path.stroke = stroke_of(meaning, style);
    if (path.stroke) add(std::move(path));
  }
  void line(Point from, Point to) const { stroked(polyline(std::array{from, to}, false)); }
};

void half_diamond(const Pen &pen, Point c, Pt half) {
  const Point left{c.x - half, c.y}, right{c.x + half, c.y}, top{c.x, c.y - half}, foot{c.x, c.y + half};
  pen.filled(polyline(std::array{top, right, foot, left}, true));
  // A tone from the ramp takes the whole square: the shape alone says the verdict then.
  if (pen.override_tone || !pen.meaning.stroke) return;
  auto lower = polyline(std::array{left, right, foot}, true);
  lower.fill = colour(style::tone(pen.style, *pen.meaning.stroke));
  pen.add(std::move(lower));
}

void triangle_down(const Pen &pen, Point c, Pt size) {
  const Pt half = size / 2, rise = size * (triangle_share / 2);
  pen.filled(polyline(std::array{Point{c.x - half, c.y - rise}, Point{c.x + half, c.y - rise},
                                 Point{c.x, c.y + rise}}, true));
}

void cross(const Pen &pen, Point c, Pt half) {
  page::Path path;
  path.steps = {page::Move{{c.x - half, c.y - half}}, page::Line{{c.x + half, c.y + half}},
                page::Move{{c.x - half, c.y + half}}, page::Line{{c.x + half, c.y - half}}};
  pen.stroked(std::move(path));
}

void level_line(const Pen &pen, Point c, Pt half) { pen.line({c.x - half, c.y}, {c.x + half, c.y}); }

void double_line(const Pen &pen, Point c, Pt half) {
  const Pt apart = pen.meaning.stroke_width * (double_spacing / 2);
  level_line(pen, {c.x, c.y - apart}, half);
  level_line(pen, {c.x, c.y + apart}, half);
}

} // namespace

base::Size sign_size(const style::MeaningStyle &meaning) {
  const Pt s = meaning.shape_size, thick = meaning.stroke_width;
  switch (meaning.shape) {
  case Shape::none: return {};
  case Shape::tick:
  case Shape::caution_bar: return {thick, s};
  case Shape::line_heavy:
  case Shape::line_light:
  case Shape::line_dashed:
  case Shape::line_dotted: return {s, thick};
  case Shape::line_double: return {s, thick * (double_spacing + 1)};
  case Shape::circle:
  case Shape::half_diamond:
  case Shape::triangle_down:
  case Shape::dash:
  case Shape::cross:
  case Shape::dot:
  case Shape::ring: return {s, s};
  }
  return {};
}

void draw_sign(const style::MeaningStyle &meaning, const style::Style &style, Point centre,
               std::optional<style::Tone> fill_override, const page::TagPath &tag, const std::string &id,
               std::vector<page::Item> &out) {
  const Pen pen{meaning, style, fill_override, tag, id, out};
  const Pt s = meaning.shape_size, half = s / 2;
  switch (meaning.shape) {
  case Shape::none: return;
  case Shape::circle: return pen.filled(circle(centre, half * circle_share));
  case Shape::half_diamond: return half_diamond(pen, centre, half);
  case Shape::triangle_down: return triangle_down(pen, centre, s);
  case Shape::cross: return cross(pen, centre, half);
  case Shape::dot:
  case Shape::ring: return pen.filled(circle(centre, half));
  case Shape::tick:
  case Shape::caution_bar: return pen.line({centre.x, centre.y - half}, {centre.x, centre.y + half});
  case Shape::dash:
  case Shape::line_heavy:
  case Shape::line_light:
  case Shape::line_dashed:
  case Shape::line_dotted: return level_line(pen, centre, half);
  case Shape::line_double: return double_line(pen, centre, half);
  }
}

} // namespace strakebook::typeset
