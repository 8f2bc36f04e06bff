#include <catch2/catch.hpp>

#include <functional>
#include <random>

#include "strakebook/paper/typeset/rivers.h"
#include "strakebook/paper/typeset/total_fit.h"
#include "support/paper_style.h"

using namespace strakebook::typeset;
using paper_test::setting;

namespace {

// Pieces by hand: every width is a whole number of points, so that lines are sums.

Piece box(double width) {
  Piece piece;
  piece.width = {width};
  return piece;
}

Piece glue() {
  Piece piece = box(4);
  piece.kind = Piece::Kind::glue;
  return piece;
}

Piece hyphen() {
  Piece piece = box(0);
  piece.kind = Piece::Kind::hyphen;
  piece.penalty = 50;
  piece.division = std::make_shared<const Division>(Division{box(3), box(0)});
  return piece;
}

/// Words of `widths`; a negative one is a word in two parts that may be divided.
std::vector<Piece> words(const std::vector<int> &widths) {
  std::vector<Piece> pieces;
  for (const int width : widths) {
    if (!pieces.empty())
      pieces.push_back(glue());
    pieces.push_back(box(std::abs(width)));
    if (width < 0) {
      pieces.push_back(hyphen());
      pieces.push_back(box(-width));
    }
  }
  return pieces;
}

struct Line {
  bool divided = false, last = false, fits = true, loose = false;
};

std::vector<Line> described(const std::vector<Piece> &pieces, const std::vector<LineSpan> &spans, double width) {
  std::vector<Line> lines;
  for (const auto &span : spans) {
    double blanks = 0;
    for (auto i = span.begin; i < span.end; ++i)
      blanks += pieces[i].kind == Piece::Kind::glue ? pieces[i].width.v : 0;
    const double slack = width - span.natural.v;
    lines.push_back({span.tail.has_value(), span.last, slack >= -blanks / 4 - 1e-9,
                     !span.last && slack > blanks / 2 + 1e-9});
  }
  return lines;
}

bool within(const std::vector<Line> &lines) {
  int row = 0;
  for (const auto &line : lines) {
    row = line.divided ? row + 1 : 0;
    if (!line.fits || line.loose || row > 2)
      return false;
  }
  return true;
}

/// Every way to break the pieces that keeps to the setting, by trying all of them.
void every_way(const std::vector<Piece> &pieces, double width, const std::function<bool(const std::vector<Line> &)> &seen) {
  const auto stops = stops_of(pieces, true);
  std::vector<LineSpan> spans;
  std::function<bool(std::size_t)> go = [&](std::size_t i) {
    if (i + 1 == stops.size())
      return seen(described(pieces, spans, width));
    for (std::size_t j = i + 1; j < stops.size(); ++j) {
      LineSpan span{stops[i].next, std::max(stops[i].next, stops[j].end)};
      if (stops[i].divides)
        span.head = stops[i].end;
      if (stops[j].divides)
        span.tail = stops[j].end;
      span.natural = {stops[i].begins_with + stops[j].ends_with};
      for (auto k = span.begin; k < span.end; ++k)
        span.natural += pieces[k].width;
      span.last = stops[j].forced;
      if (span.natural.v > 1.3 * width)
        break;
      spans.push_back(span);
      const bool stop = within(described(pieces, spans, width)) && go(j); // what is beyond already stays so
      spans.pop_back();
      if (stop)
        return true;
    }
    return false;
  };
  go(0);
}

bool some_way_keeps_within(const std::vector<Piece> &pieces, double width) {
  bool found = false;
  every_way(pieces, width, [&](const std::vector<Line> &lines) { return found = within(lines); });
  return found;
}

int longest_row(const std::vector<Line> &lines) {
  int row = 0, longest = 0;
  for (const auto &line : lines)
    longest = std::max(longest, row = line.divided ? row + 1 : 0);
  return longest;
}

} // namespace

TEST_CASE("blanks and hyphens in a row keep to the setting whenever any way of breaking does") {
  std::mt19937 random(20260814); // a fixed seed: the same paragraphs each time
  const auto s = setting();
  int kept = 0, impossible = 0;
  for (int run = 0; run < 300; ++run) {
    std::vector<int> widths;
    for (int i = 0; i < 14; ++i) {
      const int width = 4 + static_cast<int>(random() % 14);
      widths.push_back(random() % 3 == 0 ? -width : width);
    }
    const double width = 60 + static_cast<double>(random() % 40);
    const auto pieces = words(widths);
    const auto lines = described(pieces, break_lines(pieces, {{width}, {}, true, s}), width);
    const bool possible = some_way_keeps_within(pieces, width);
    INFO("run " << run);
    CHECK(within(lines) == possible);
    (possible ? kept : impossible) += 1;
  }
  CHECK(kept > 20);
  CHECK(impossible > 20);
}

TEST_CASE("a third hyphen in a row is set only where nothing else can be") {
  // Three words of two parts; the column holds one part and a hyphen more, and no way of breaking avoids the rows.
  const auto s = setting();
  const auto pieces = words({-40, -40, -40, -40});
  const double width = 84; // 40 + 4 + 40: the second part of one word and the first of the next, without the hyphen
  const auto lines = described(pieces, break_lines(pieces, {{width}, {}, true, s}), width);
  CHECK(longest_row(lines) <= 2);
}

TEST_CASE("a word above a last line is not divided where it can be helped") {
  const auto s = setting();
  const auto pieces = words({30, 30, 30, 30, -14, 30});
  const auto lines = described(pieces, break_lines(pieces, {{100}, {}, true, s}), 100);
  REQUIRE(lines.size() >= 2);
  CHECK_FALSE(lines[lines.size() - 2].divided);
}

TEST_CASE("a last line is not hardly a word where it can be helped") {
  auto s = setting();
  // 11 words fill a line loosely, 12 tightly; of 23 one would be left over.
  const auto pieces = words(std::vector<int>(23, 14));
  CHECK(break_lines(pieces, {{204.5}, {}, true, s}).back().natural.v >= s.last_line.v);
  s.last_line = {};
  CHECK(break_lines(pieces, {{204.5}, {}, true, s}).back().natural.v == Approx(14));
}

TEST_CASE("what hangs over the edge is not counted into the line") {
  const auto s = setting();
  auto pieces = words({48, 48, 48, 20});
  pieces[2].hang = {2}; // 48 + 4 + 48 with 2 pt outside the edge: 98
  const auto spans = break_lines(pieces, {{98}, {}, true, s});
  REQUIRE(spans.size() == 2);
  CHECK(spans[0].natural.v == Approx(98));
  CHECK(glue_factor(pieces, spans[0], {98}) == Approx(1));
}

TEST_CASE("a river is blanks one under the other in four lines, sharing half of the narrower") {
  const Blanks here{{50, 54}}, near{{52, 56}}, far{{53, 57}}, elsewhere{{10, 14}};
  CHECK(rivers_in({here, near, here, near}, 4, 0.5).size() == 1);
  CHECK(rivers_in({here, near, here}, 4, 0.5).empty());
  CHECK(rivers_in({here, far, here, far}, 4, 0.5).empty()); // a quarter is shared
  CHECK(rivers_in({here, near, elsewhere, here, near}, 4, 0.5).empty());
  const auto long_one = rivers_in({elsewhere, here, near, here, near, here}, 4, 0.5);
  REQUIRE(long_one.size() == 1); // the whole of it once
  CHECK(long_one[0].first == 1);
  CHECK(long_one[0].last == 5);
}

TEST_CASE("a river is left for another way of breaking near the best") {
  auto s = setting();
  // Lines of equal words put every blank under the last one; a divided word moves them.
  std::vector<int> widths;
  for (int i = 0; i < 24; ++i)
    widths.push_back(i % 5 == 4 ? -15 : 22);
  const auto pieces = words(widths);
  const Measure with{{130}, {}, true, s};
  auto blind = s;
  blind.river_lines = 0;
  const Measure without{{130}, {}, true, blind};
  const auto count = [&](const Measure &measure) {
    return rivers_in(blanks_of(pieces, break_lines(pieces, measure), with), 3, 0.5).size();
  };
  s.river_lines = 3;
  CHECK(count(with) <= count(without));
}
