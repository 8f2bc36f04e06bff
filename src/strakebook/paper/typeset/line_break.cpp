#include "strakebook/paper/typeset/line_break.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace strakebook::typeset {
namespace {

constexpr double unreachable = std::numeric_limits<double>::infinity();
constexpr double badness_most = 10000;
constexpr double overfull = 1e12;        // only where a single letter is wider than the line
constexpr double short_last_line = 3000; // the last line holds hardly a word
constexpr double slack_tolerance = 1e-6; // points: the sum of floating widths

/// A place where a line may end. The line before it ends at `end`, the line after begins at `next`.
struct Stop {
  std::size_t end = 0, next = 0;
  double penalty = 0;
  bool forced = false;
};

struct Sums {
  std::vector<double> width, glue; ///< of the pieces before each

  explicit Sums(const std::vector<Piece> &pieces) : width(pieces.size() + 1), glue(pieces.size() + 1) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      width[i + 1] = width[i] + pieces[i].width.v;
      glue[i + 1] = glue[i] + (pieces[i].kind == Piece::Kind::glue ? pieces[i].width.v : 0);
    }
  }
};

std::vector<Stop> stops_of(const std::vector<Piece> &pieces) {
  std::vector<Stop> stops{{0, 0, 0, true}};
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const auto kind = pieces[i].kind;
    if (kind == Piece::Kind::glue || kind == Piece::Kind::chance || kind == Piece::Kind::forced)
      stops.push_back({i, i + 1, pieces[i].penalty, kind == Piece::Kind::forced});
  }
  stops.push_back({pieces.size(), pieces.size(), 0, true});
  return stops;
}

/// Demerits of one line; nullopt: too full.
std::optional<double> demerits(double natural, double glue, double room, const Stop &stop,
                               const Measure &measure) {
  const double slack = room - natural;
  if (slack < -slack_tolerance - (measure.justified ? glue * glue_shrink : 0))
    return std::nullopt;
  double badness = 0;
  if (!measure.justified)
    badness = stop.forced ? 0 : 100 * std::min(1.0, slack / room) * 4;
  else if (slack < 0)
    badness = 100 * std::min(1.0, -slack / std::max(glue * glue_shrink, 1e-9));
  else if (!stop.forced) {
    const double ratio = slack / std::max(glue * glue_stretch, 1e-3);
    badness = std::min(badness_most, 100 * ratio * ratio * ratio);
  }
  const double sum = 1 + badness + stop.penalty;
  const bool meagre = stop.forced && natural < 0.15 * room;
  return sum * sum + (meagre ? short_last_line : 0);
}

class Fit {
public:
  Fit(const std::vector<Piece> &pieces, const Measure &measure)
      : sums_(pieces), stops_(stops_of(pieces)), measure_(measure), best_(stops_.size(), unreachable),
        from_(stops_.size(), 0) {
    best_[0] = 0;
    for (std::size_t i = 0; i + 1 < stops_.size(); ++i)
      if (best_[i] < unreachable)
        extend(i);
  }

  std::vector<LineSpan> lines() const {
    std::vector<LineSpan> lines;
    for (std::size_t j = stops_.size() - 1; j > 0; j = from_[j]) {
      const std::size_t begin = stops_[from_[j]].next, end = std::max(begin, stops_[j].end);
      lines.push_back({begin, end, {sums_.width[end] - sums_.width[begin]}, stops_[j].forced});
    }
    std::reverse(lines.begin(), lines.end());
    return lines;
  }

private:
  void extend(std::size_t i) {
    const std::size_t begin = stops_[i].next;
    const double room = measure_.width.v - (i == 0 ? measure_.first_indent.v : 0);
    for (std::size_t j = i + 1; j < stops_.size(); ++j) {
      const std::size_t end = std::max(begin, stops_[j].end);
      const auto cost = demerits(sums_.width[end] - sums_.width[begin], sums_.glue[end] - sums_.glue[begin],
                                 room, stops_[j], measure_);
      if (cost)
        reach(j, i, *cost);
      else if (j == i + 1)
        reach(j, i, overfull);
      if (!cost || stops_[j].forced)
        return;
    }
  }

  void reach(std::size_t j, std::size_t i, double cost) {
    if (best_[i] + cost < best_[j]) {
      best_[j] = best_[i] + cost;
      from_[j] = i;
    }
  }

  Sums sums_;
  std::vector<Stop> stops_;
  Measure measure_;
  std::vector<double> best_;
  std::vector<std::size_t> from_;
};

} // namespace

std::vector<LineSpan> break_lines(const std::vector<Piece> &pieces, const Measure &measure) {
  return Fit(pieces, measure).lines();
}

} // namespace strakebook::typeset
