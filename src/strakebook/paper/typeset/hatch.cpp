#include "strakebook/paper/typeset/hatch.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace strakebook::typeset {
namespace {

/// A point seen along a family of lines: `across` is the same for all points of one line, `along` grows on it.
struct Turned {
  double across = 0, along = 0;
};

/// Lines that rise to the right have x + y constant (y is down); those that fall have x - y constant.
Turned turned(base::Point p, bool rising) {
  const double sum = p.x.v + p.y.v, difference = p.x.v - p.y.v;
  return rising ? Turned{sum, difference} : Turned{difference, sum};
}

base::Point turned_back(Turned t, bool rising) {
  const double sum = rising ? t.across : t.along, difference = rising ? t.along : t.across;
  return {{(sum + difference) / 2}, {(sum - difference) / 2}};
}

/// Where the line at `across` meets the edges, in order. An edge counts its lower end and not its upper one, so that a
/// line through a corner meets it once or not at all.
std::vector<double> crossings(std::span<const Turned> corners, double across) {
  std::vector<double> found;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Turned a = corners[i], b = corners[(i + 1) % corners.size()];
    if ((a.across <= across) == (b.across <= across)) continue;
    found.push_back(a.along + (b.along - a.along) * (across - a.across) / (b.across - a.across));
  }
  std::sort(found.begin(), found.end());
  return found;
}

void add_family(std::span<const base::Point> polygon, bool rising, double step, std::vector<HatchLine> &lines) {
  std::vector<Turned> corners;
  corners.reserve(polygon.size());
  for (const auto &p : polygon) corners.push_back(turned(p, rising));
  const auto [low, high] = std::minmax_element(corners.begin(), corners.end(),
                                               [](Turned a, Turned b) { return a.across < b.across; });
  const auto first = static_cast<long>(std::ceil(low->across / step));
  const auto last = static_cast<long>(std::floor(high->across / step));
  for (long k = first; k <= last; ++k) {
    const double across = static_cast<double>(k) * step;
    const auto along = crossings(corners, across);
    for (std::size_t i = 0; i + 1 < along.size(); i += 2)
      lines.push_back({turned_back({across, along[i]}, rising), turned_back({across, along[i + 1]}, rising)});
  }
}

} // namespace

std::vector<HatchLine> hatch_lines(std::span<const base::Point> polygon, style::Hatch hatch, base::Pt pitch) {
  if (hatch == style::Hatch::none || polygon.size() < 3) return {};
  if (pitch.v <= 0) throw std::invalid_argument("a hatch needs a pitch over 0");
  // Two 45 degree lines a pitch apart differ by the root of two times the pitch in x + y.
  const double step = pitch.v * std::numbers::sqrt2;
  std::vector<HatchLine> lines;
  add_family(polygon, true, step, lines);
  if (hatch == style::Hatch::cross) add_family(polygon, false, step, lines);
  return lines;
}

} // namespace strakebook::typeset
