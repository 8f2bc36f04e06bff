#include "strakebook/paper/typeset/line_break.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "strakebook/paper/typeset/rivers.h"
#include "strakebook/paper/typeset/total_fit.h"

namespace strakebook::typeset {
namespace {

constexpr int river_rounds = 3; // ways tried one after the other before a river is left

class Breaker {
public:
  Breaker(const std::vector<Piece> &pieces, const Measure &measure)
      : pieces_(pieces), measure_(measure), stops_(stops_of(pieces, measure.justified)) {}

  std::vector<LineSpan> lines() {
    if (!measure_.justified)
      return spans(*best_way(pieces_, stops_, measure_, {.emergency = true}));
    Terms terms{.divide = false};
    auto way = best_way(pieces_, stops_, measure_, terms);
    if (!way) {
      terms.divide = true;
      way = best_way(pieces_, stops_, measure_, terms);
    }
    if (!way)
      return spans(*best_way(pieces_, stops_, measure_, {.emergency = true}));
    return without_rivers(std::move(*way));
  }

private:
  std::size_t rivers(const std::vector<LineSpan> &lines) const {
    return found_rivers(lines).size();
  }

  std::vector<River> found_rivers(const std::vector<LineSpan> &lines) const {
    const auto &setting = measure_.setting;
    if (lines.size() < static_cast<std::size_t>(std::max(2, setting.river_lines)))
      return {};
    return rivers_in(blanks_of(pieces_, lines, measure_), setting.river_lines, setting.river_overlap);
  }

  /// Other ways near the best: one of the line ends above and in the river is given up at a time.
  std::vector<LineSpan> without_rivers(Way way) {
    auto lines = spans(way);
    for (int round = 0; round < river_rounds; ++round) {
      const auto found = found_rivers(lines);
      if (found.empty())
        break;
      std::optional<Way> better;
      std::size_t fewest = found.size();
      for (std::size_t line = 0; line < found.front().last; ++line) {
        auto other = best_way(pieces_, stops_, measure_, {.without = way.stops[line]});
        if (!other)
          continue;
        const std::size_t count = rivers(spans(*other));
        if (count < fewest || (better && count == fewest && other->demerits < better->demerits)) {
          fewest = count;
          better = std::move(other);
        }
      }
      if (!better)
        break;
      way = std::move(*better);
      lines = spans(way);
    }
    return lines;
  }

  std::vector<LineSpan> spans(const Way &way) const {
    std::vector<LineSpan> lines;
    std::size_t from = 0;
    for (const std::size_t to : way.stops) {
      const Stop &first = stops_[from], &last = stops_[to];
      LineSpan line;
      line.begin = first.next;
      line.end = std::max(line.begin, last.end);
      if (first.divides)
        line.head = first.end;
      if (last.divides)
        line.tail = last.end;
      line.natural = base::Pt{first.begins_with + last.ends_with};
      for (std::size_t i = line.begin; i < line.end; ++i)
        line.natural += pieces_[i].width;
      line.last = last.forced;
      lines.push_back(line);
      from = to;
    }
    return lines;
  }

  const std::vector<Piece> &pieces_;
  const Measure &measure_;
  std::vector<Stop> stops_;
};

/// What fits on one line is one line: most cells of tables are, and need no weighing.
std::optional<LineSpan> single_line(const std::vector<Piece> &pieces, const Measure &measure) {
  base::Pt natural;
  for (const auto &piece : pieces) {
    if (piece.kind == Piece::Kind::forced)
      return std::nullopt;
    natural += piece.width;
  }
  if (pieces.empty() || natural > measure.width - measure.first_indent)
    return std::nullopt;
  return LineSpan{.begin = 0, .end = pieces.size(), .natural = natural, .last = true};
}

} // namespace

std::vector<LineSpan> break_lines(const std::vector<Piece> &pieces, const Measure &measure) {
  if (const auto line = single_line(pieces, measure))
    return {*line};
  return Breaker(pieces, measure).lines();
}

double glue_factor(const std::vector<Piece> &pieces, const LineSpan &line, base::Pt room) {
  base::Pt glue;
  for (std::size_t i = line.begin; i < line.end; ++i)
    if (pieces[i].kind == Piece::Kind::glue)
      glue += pieces[i].width;
  return glue.v > 0 ? 1 + (room - line.natural) / glue : 1;
}

} // namespace strakebook::typeset
