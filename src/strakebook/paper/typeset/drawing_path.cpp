#include "strakebook/paper/typeset/drawing_path.h"

#include "strakebook/paper/typeset/fragment.h"
#include "strakebook/paper/typeset/hatch.h"

namespace strakebook::typeset {

page::Path polyline(std::span<const base::Point> points, bool closed) {
  page::Path path;
  path.steps.reserve(points.size() + 1);
  path.steps.emplace_back(page::Move{points.front()});
  for (const auto &p : points.subspan(1)) path.steps.emplace_back(page::Line{p});
  if (closed) path.steps.emplace_back(page::Close{});
  return path;
}

page::Path circle(base::Point c, base::Pt r) {
  // 4/3 (sqrt 2 - 1): the cubic that meets a quarter circle at its ends and its middle.
  const base::Pt k = r * 0.5522847498;
  page::Path path;
  path.steps = {page::Move{{c.x + r, c.y}},
                page::Curve{{c.x + r, c.y + k}, {c.x + k, c.y + r}, {c.x, c.y + r}},
                page::Curve{{c.x - k, c.y + r}, {c.x - r, c.y + k}, {c.x - r, c.y}},
                page::Curve{{c.x - r, c.y - k}, {c.x - k, c.y - r}, {c.x, c.y - r}},
                page::Curve{{c.x + k, c.y - r}, {c.x + r, c.y - k}, {c.x + r, c.y}},
                page::Close{}};
  return path;
}

std::optional<page::Stroke> stroke_of(const style::MeaningStyle &meaning, const style::Style &style) {
  if (!meaning.stroke) return std::nullopt;
  return page::Stroke{meaning.stroke_width, colour(style::tone(style, *meaning.stroke)), meaning.dash};
}

std::optional<page::Colour> fill_of(const style::MeaningStyle &meaning, const style::Style &style) {
  if (!meaning.fill) return std::nullopt;
  return colour(style::tone(style, *meaning.fill));
}

std::optional<page::Path> hatch_of(const style::MeaningStyle &meaning, const style::Style &style,
                                   std::span<const base::Point> polygon) {
  const auto lines = hatch_lines(polygon, meaning.hatch, meaning.hatch_pitch);
  if (lines.empty()) return std::nullopt;
  page::Path path;
  path.steps.reserve(lines.size() * 2);
  for (const auto &line : lines) {
    path.steps.emplace_back(page::Move{line.from});
    path.steps.emplace_back(page::Line{line.to});
  }
  path.stroke = page::Stroke{meaning.hatch_width, colour(style::tone(style, meaning.hatch_tone)), {}};
  return path;
}

} // namespace strakebook::typeset
