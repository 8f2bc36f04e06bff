#include "strakebook/paper/typeset/total_fit.h"

#include <algorithm>
#include <limits>

namespace strakebook::typeset {
namespace {

constexpr double unreachable = std::numeric_limits<double>::infinity();
constexpr double badness_most = 10000;
// Plain TeX's \linepenalty, \adjdemerits, \doublehyphendemerits and \finalhyphendemerits.
constexpr double line_penalty = 10, beside_demerits = 10000, row_demerits = 10000, final_demerits = 5000;
constexpr double stub_demerits = 1e6;        // a divided word above, or a last line of, hardly a word
constexpr double ragged_meagre = 0.15, ragged_demerits = 3000; // of the room; weighed, not forbidden
constexpr double too_many_hyphens = 1e12;    // only where nothing else can be set
constexpr double overfull = 1e15;            // only where a single letter is wider than the line
constexpr double slack_tolerance = 1e-6;     // points: the sum of floating widths
constexpr std::size_t classes = 4;           // tight, decent, loose, very loose
constexpr std::size_t decent = 1;

struct Sums {
  std::vector<double> width, glue; ///< of the pieces before each

  explicit Sums(const std::vector<Piece> &pieces) : width(pieces.size() + 1), glue(pieces.size() + 1) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      width[i + 1] = width[i] + pieces[i].width.v;
      glue[i + 1] = glue[i] + (pieces[i].kind == Piece::Kind::glue ? pieces[i].width.v : 0);
    }
  }
};

/// One line as it would be set.
struct Weighed {
  bool fits = true;    ///< false: too full
  bool loose = false;  ///< beyond the setting
  double badness = 0;
  std::size_t fitness = decent;
};

Weighed weighed_ragged(double slack, double room, bool forced) {
  Weighed line;
  line.fits = slack >= -slack_tolerance;
  line.badness = forced ? 0 : 400 * std::min(1.0, slack / room);
  return line;
}

Weighed weighed_justified(double slack, double glue, bool forced, const style::Setting &setting) {
  Weighed line;
  const double shrink = glue * setting.blanks_shrink, stretch = glue * setting.blanks_grow;
  line.fits = slack >= -slack_tolerance - shrink;
  if (slack < 0) {
    const double ratio = std::min(1.0, -slack / std::max(shrink, 1e-9));
    line.badness = 100 * ratio * ratio * ratio;
    line.fitness = ratio > 0.5 ? 0 : decent;
  } else if (!forced) {
    const double ratio = slack / std::max(stretch, 1e-3);
    line.loose = ratio > 1;
    line.badness = std::min(badness_most, 100 * ratio * ratio * ratio);
    line.fitness = ratio > 1 ? 3 : ratio > 0.5 ? 2 : decent;
  }
  return line;
}

class Search {
public:
  Search(const std::vector<Piece> &pieces, const std::vector<Stop> &stops, const Measure &measure,
         const Terms &terms)
      : sums_(pieces), stops_(stops), measure_(measure), terms_(terms),
        rows_(measure.justified ? static_cast<std::size_t>(std::max(0, measure.setting.divided_in_a_row)) + 1 : 1),
        nodes_(stops.size() * classes * rows_) {}

  std::optional<Way> found() {
    node(0, decent, 0).cost = 0;
    for (std::size_t i = 0; i + 1 < stops_.size(); ++i)
      extend(i);
    return way_back();
  }

private:
  struct Node {
    double cost = unreachable;
    std::size_t from = 0; ///< index of the node before
  };

  std::size_t states() const { return classes * rows_; }
  Node &node(std::size_t stop, std::size_t fitness, std::size_t row) {
    return nodes_[stop * states() + fitness * rows_ + row];
  }

  bool allowed(std::size_t j) const {
    return (terms_.divide || !stops_[j].divides) && terms_.without != j;
  }

  void extend(std::size_t i) {
    const auto first = nodes_.begin() + static_cast<std::ptrdiff_t>(i * states());
    if (std::none_of(first, first + static_cast<std::ptrdiff_t>(states()),
                     [](const Node &n) { return n.cost < unreachable; }))
      return;
    const double room = measure_.width.v - (i == 0 ? measure_.first_indent.v : 0);
    bool any = false;
    for (std::size_t j = i + 1; j < stops_.size(); ++j) {
      if (allowed(j)) {
        const double natural = natural_width(i, j);
        auto line = weighed(i, j, room, natural);
        if (line.fits && (!line.loose || terms_.emergency))
          reach_from(i, j, line, room, natural);
        else if (!line.fits && !any && terms_.emergency)
          force(i, j);
        if (!line.fits && !too_full_only_here(i, j, room))
          return;
        any = any || line.fits;
      }
      if (stops_[j].forced)
        return;
    }
  }

  /// A hyphen may be what is too much; a later stop may fit yet.
  bool too_full_only_here(std::size_t i, std::size_t j, double room) const {
    if (stops_[j].ends_with <= 0)
      return false;
    const double bare = natural_width(i, j) - stops_[j].ends_with;
    return bare <= room + sums_.glue[stops_[j].end];
  }

  double natural_width(std::size_t i, std::size_t j) const {
    const std::size_t begin = stops_[i].next, end = std::max(begin, stops_[j].end);
    return stops_[i].begins_with + sums_.width[end] - sums_.width[begin] + stops_[j].ends_with;
  }

  Weighed weighed(std::size_t i, std::size_t j, double room, double natural) const {
    const std::size_t begin = stops_[i].next, end = std::max(begin, stops_[j].end);
    return measure_.justified ? weighed_justified(room - natural, sums_.glue[end] - sums_.glue[begin],
                                                  stops_[j].forced, measure_.setting)
                              : weighed_ragged(room - natural, room, stops_[j].forced);
  }

  void reach_from(std::size_t i, std::size_t j, const Weighed &line, double room, double natural) {
    const Stop &stop = stops_[j];
    const double sum = line_penalty + line.badness + stop.penalty;
    double cost = sum * sum;
    if (stop.forced)
      cost += meagre_demerits(i, room, natural);
    if (stop.forced && stops_[i].divides)
      cost += natural < room / 3 ? stub_demerits : final_demerits;
    for (std::size_t f = 0; f < classes; ++f)
      for (std::size_t row = 0; row < rows_; ++row) {
        const Node &before = node(i, f, row);
        if (before.cost == unreachable)
          continue;
        const std::size_t most = rows_ - 1, apart = f > line.fitness ? f - line.fitness : line.fitness - f;
        const bool too_many = stop.divides && row == most;
        if (too_many && measure_.justified && !terms_.emergency)
          continue;
        const double more = (i > 0 && measure_.justified && apart > 1 ? beside_demerits : 0) +
                            (stop.divides && row > 0 ? row_demerits : 0) +
                            (too_many && measure_.justified ? too_many_hyphens : 0);
        const std::size_t next_row = stop.divides ? std::min(most, row + 1) : 0;
        reach(j, line.fitness, next_row, before.cost + cost + more, index_of(i, f, row));
      }
  }

  /// Of a last line with hardly a word in it.
  double meagre_demerits(std::size_t i, double room, double natural) const {
    if (!measure_.justified)
      return natural < ragged_meagre * room ? ragged_demerits : 0;
    return i > 0 && natural < std::min(measure_.setting.last_line.v, room) ? stub_demerits : 0;
  }

  /// A line that is too full, because nothing shorter can be had.
  void force(std::size_t i, std::size_t j) {
    for (std::size_t f = 0; f < classes; ++f)
      for (std::size_t row = 0; row < rows_; ++row)
        if (node(i, f, row).cost < unreachable)
          reach(j, decent, 0, node(i, f, row).cost + overfull, index_of(i, f, row));
  }

  std::size_t index_of(std::size_t stop, std::size_t fitness, std::size_t row) const {
    return stop * states() + fitness * rows_ + row;
  }

  void reach(std::size_t j, std::size_t fitness, std::size_t row, double cost, std::size_t from) {
    Node &at = node(j, fitness, row);
    if (cost < at.cost)
      at = {cost, from};
  }

  std::optional<Way> way_back() const {
    const auto first = nodes_.end() - static_cast<std::ptrdiff_t>(states());
    const auto best = std::min_element(first, nodes_.end(),
                                       [](const Node &a, const Node &b) { return a.cost < b.cost; });
    if (best->cost == unreachable)
      return std::nullopt;
    Way way{{}, best->cost};
    for (auto at = static_cast<std::size_t>(best - nodes_.begin()); at / states() > 0; at = nodes_[at].from)
      way.stops.push_back(at / states());
    std::reverse(way.stops.begin(), way.stops.end());
    return way;
  }

  Sums sums_;
  const std::vector<Stop> &stops_;
  const Measure &measure_;
  const Terms &terms_;
  std::size_t rows_; ///< how many lines before may have ended in a hyphen
  std::vector<Node> nodes_;
};

} // namespace

std::vector<Stop> stops_of(const std::vector<Piece> &pieces, bool justified) {
  std::vector<Stop> stops{{.forced = true}};
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!may_end(pieces[i]))
      continue;
    Stop stop{i, i + 1, pieces[i].penalty};
    stop.forced = pieces[i].kind == Piece::Kind::forced;
    stop.divides = pieces[i].kind == Piece::Kind::hyphen;
    const base::Pt hang = stop.divides ? pieces[i].division->before.hang : i > 0 ? pieces[i - 1].hang : base::Pt{};
    if (stop.divides) {
      stop.ends_with = pieces[i].division->before.width.v;
      stop.begins_with = pieces[i].division->after.width.v;
    }
    if (justified && !stop.forced)
      stop.ends_with -= hang.v;
    stops.push_back(stop);
  }
  stops.push_back({.end = pieces.size(), .next = pieces.size(), .forced = true});
  return stops;
}

std::optional<Way> best_way(const std::vector<Piece> &pieces, const std::vector<Stop> &stops,
                            const Measure &measure, const Terms &terms) {
  return Search(pieces, stops, measure, terms).found();
}

} // namespace strakebook::typeset
