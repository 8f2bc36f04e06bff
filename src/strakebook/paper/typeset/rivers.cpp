#include "strakebook/paper/typeset/rivers.h"

#include <algorithm>

namespace strakebook::typeset {
namespace {

/// How many lines the river has that a blank is the lowest of.
using Depths = std::vector<int>;

bool joined(const Blank &a, const Blank &b, double overlap) {
  const double shared = std::min(a.to, b.to) - std::max(a.from, b.from);
  return shared > 0 && shared >= overlap * std::min(a.to - a.from, b.to - b.from);
}

int depth_under(const Blank &blank, const Blanks &above, const Depths &depths, double overlap) {
  int deepest = 0;
  for (std::size_t i = 0; i < above.size(); ++i)
    if (joined(blank, above[i], overlap))
      deepest = std::max(deepest, depths[i]);
  return deepest + 1;
}

bool goes_on(const Blank &blank, const Blanks &below, double overlap) {
  return std::any_of(below.begin(), below.end(),
                     [&](const Blank &next) { return joined(blank, next, overlap); });
}

} // namespace

std::vector<River> rivers_in(const std::vector<Blanks> &lines, int least_lines, double overlap) {
  std::vector<River> rivers;
  if (least_lines < 2 || lines.size() < static_cast<std::size_t>(least_lines))
    return rivers;
  Depths above;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    Depths depths;
    for (const auto &blank : lines[line]) {
      depths.push_back(line == 0 ? 1 : depth_under(blank, lines[line - 1], above, overlap));
      const bool ends = line + 1 == lines.size() || !goes_on(blank, lines[line + 1], overlap);
      if (ends && depths.back() >= least_lines)
        rivers.push_back({line + 1 - static_cast<std::size_t>(depths.back()), line});
    }
    above = std::move(depths);
  }
  return rivers;
}

std::vector<Blanks> blanks_of(const std::vector<Piece> &pieces, const std::vector<LineSpan> &lines,
                              const Measure &measure) {
  std::vector<Blanks> all;
  for (const auto &line : lines) {
    const base::Pt indent = all.empty() ? measure.first_indent : base::Pt{};
    const double factor =
        line.last && line.natural <= measure.width - indent ? 1 : glue_factor(pieces, line, measure.width - indent);
    double x = indent.v + (line.head ? pieces[*line.head].division->after.width.v : 0);
    Blanks &blanks = all.emplace_back();
    for (std::size_t i = line.begin; i < line.end; ++i) {
      const bool blank = pieces[i].kind == Piece::Kind::glue;
      const double width = pieces[i].width.v * (blank ? factor : 1);
      if (blank)
        blanks.push_back({x, x + width});
      x += width;
    }
  }
  return all;
}

} // namespace strakebook::typeset
