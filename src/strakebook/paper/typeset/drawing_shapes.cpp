#include "strakebook/paper/typeset/drawing_shapes.h"

#include <array>
#include <cmath>
#include <optional>

#include "strakebook/paper/typeset/drawing_path.h"
#include "strakebook/paper/typeset/signs.h"

namespace strakebook::typeset {
namespace {

using base::Point;
using base::Pt;
using Ends = content::Span::Ends;

/// Half the width of an arrow head over its length.
constexpr double head_share = 0.3;

void add(const Brush &brush, page::Path path) {
  brush.out.push_back({brush.tag, brush.id, std::move(path)});
}

/// A direction on paper, of length 1.
struct Way {
  double x = 1, y = 0;
};

Point along(Point from, Way way, Pt by) { return {from.x + by * way.x, from.y + by * way.y}; }

struct Line {
  Point from, to;
  Way way; ///< from `from` to `to`
  Pt length;
};

Line line_of(const content::Span &span, const DrawingScale &scale) {
  Line line{scale.place(span.from), scale.place(span.to), {}, {}};
  const Pt dx = line.to.x - line.from.x, dy = line.to.y - line.from.y;
  line.length = {std::hypot(dx.v, dy.v)};
  if (line.length.v > 0) line.way = {dx / line.length, dy / line.length};
  return line;
}

void with_ticks(const Line &line, page::Stroke stroke, const Brush &brush) {
  auto body = polyline(std::array{line.from, line.to}, false);
  body.stroke = stroke;
  add(brush, std::move(body));
  const Pt half = style::measure(brush.style, "span-tick") / 2;
  const Way across{-line.way.y, line.way.x};
  page::Path ticks;
  for (const Point end : {line.from, line.to}) {
    ticks.steps.emplace_back(page::Move{along(end, across, -half)});
    ticks.steps.emplace_back(page::Line{along(end, across, half)});
  }
  stroke.dash.clear(); // a tick is too short for a dash
  ticks.stroke = std::move(stroke);
  add(brush, std::move(ticks));
}

void head(Point tip, Way way, Pt length, page::Colour colour, const Brush &brush) {
  const Point base = along(tip, way, -length);
  const Way across{-way.y, way.x};
  auto path = polyline(std::array{tip, along(base, across, length * head_share),
                                  along(base, across, -(length * head_share))}, true);
  path.fill = colour;
  add(brush, std::move(path));
}

void with_heads(const Line &line, Ends ends, page::Stroke stroke, const Brush &brush) {
  const bool at_start = ends != Ends::end_arrow, at_end = ends != Ends::start_arrow;
  const Pt most = at_start && at_end ? line.length / 2 : line.length;
  const Pt length = std::min(style::measure(brush.style, "arrow-length"), most);
  // The line ends at the foot of the head, or its square end would blunt the point.
  const Point from = at_start ? along(line.from, line.way, length) : line.from;
  const Point to = at_end ? along(line.to, line.way, -length) : line.to;
  const page::Colour colour = stroke.colour;
  auto body = polyline(std::array{from, to}, false);
  body.stroke = std::move(stroke);
  add(brush, std::move(body));
  if (at_start) head(line.from, {-line.way.x, -line.way.y}, length, colour, brush);
  if (at_end) head(line.to, line.way, length, colour, brush);
}

} // namespace

void draw_outline(const content::Outline &outline, const Brush &brush) {
  if (outline.points.empty()) return;
  const auto &meaning = style::meaning_style(brush.style, outline.meaning);
  std::vector<Point> points;
  points.reserve(outline.points.size());
  for (const auto &p : outline.points) points.push_back(brush.scale.place(p));
  auto path = polyline(points, outline.closed);
  auto stroke = stroke_of(meaning, brush.style);
  if (outline.closed) path.fill = fill_of(meaning, brush.style);
  auto hatch = outline.closed ? hatch_of(meaning, brush.style, points) : std::nullopt;
  if (!hatch) {
    path.stroke = std::move(stroke);
    if (path.fill || path.stroke) add(brush, std::move(path));
    return;
  }
  auto edge = path;
  edge.fill.reset();
  edge.stroke = std::move(stroke);
  if (path.fill) add(brush, std::move(path));
  add(brush, std::move(*hatch));
  if (edge.stroke) add(brush, std::move(edge));
}

void draw_spot(const content::Spot &spot, const Brush &brush) {
  std::optional<style::Tone> fill;
  if (!spot.tone.empty()) fill = style::tone(brush.style, spot.tone);
  draw_sign(style::meaning_style(brush.style, spot.meaning), brush.style, brush.scale.place(spot.at), fill,
            brush.tag, brush.id, brush.out);
}

void draw_span(const content::Span &span, const Brush &brush) {
  auto stroke = stroke_of(style::meaning_style(brush.style, span.meaning), brush.style);
  if (!stroke) return;
  const Line line = line_of(span, brush.scale);
  if (span.ends == Ends::ticks) with_ticks(line, std::move(*stroke), brush);
  else with_heads(line, span.ends, std::move(*stroke), brush);
}

} // namespace strakebook::typeset
