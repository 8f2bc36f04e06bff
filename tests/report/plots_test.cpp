#include <catch2/catch.hpp>

#include <cmath>

#include "strakebook/compose/plots.h"
#include "strakebook/paper/typeset/typeset.h"
#include "strakebook/report.h"

// Plots of the results, drawn by the shipped style: what stands on paper is measured.

using namespace strakebook;

namespace {

/// The items of a page that shows one figure.
page::Document drawn(content::Drawing drawing) {
  base::Diagnostics sink;
  const auto resources = installed_resources();
  const auto opened = open_case(std::filesystem::path(STRAKEBOOK_ROOT) / "example-surveys/clean-boat/survey.yaml", resources, sink);
  REQUIRE(opened);
  const auto &style = opened->house.style;
  const auto fonts = typeset::FontSet::load(resources.fonts, style.faces, sink);
  REQUIRE(fonts);
  content::Figure figure;
  figure.label = "Figure 1";
  figure.panels.push_back({{}, {}, std::move(drawing), {}});
  content::Document document;
  document.sections.push_back({.id = "section/plots", .blocks = {{.id = "figure/plot", .what = std::move(figure)}}});
  auto pages = typeset::typeset(document, style, *fonts, typeset::Hyphenation(), sink);
  INFO(base::terminal_text(sink));
  REQUIRE(sink.ok());
  return pages;
}

using Steps = std::vector<page::Step>;

base::Point point(const page::Step &step) {
  if (const auto *move = std::get_if<page::Move>(&step)) return move->to;
  return std::get<page::Line>(step).to;
}

/// The middles of the dots: filled circles of four curves.
std::vector<base::Point> dots(const page::Document &pages) {
  std::vector<base::Point> out;
  for (const auto &item : pages.pages.at(0).items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && path->fill && path->steps.size() == 6) {
      const auto right = point(path->steps[0]), left = std::get<page::Curve>(path->steps[2]).to;
      out.push_back({(right.x + left.x) / 2, right.y});
    }
  return out;
}

/// Open lines of two points.
std::vector<std::pair<base::Point, base::Point>> lines(const page::Document &pages) {
  std::vector<std::pair<base::Point, base::Point>> out;
  for (const auto &item : pages.pages.at(0).items)
    if (const auto *path = std::get_if<page::Path>(&item.what); path && !path->fill && path->steps.size() == 2)
      out.emplace_back(point(path->steps[0]), point(path->steps[1]));
  return out;
}

compose::PlotAxis axis(double low, double high, std::vector<std::pair<double, std::string>> numbers, std::string title) {
  return {low, high, std::move(numbers), std::move(title)};
}

double off(base::Point at, base::Point from, base::Point to) {
  const double dx = to.x.v - from.x.v, dy = to.y.v - from.y.v;
  return std::abs(dx * (at.y.v - from.y.v) - dy * (at.x.v - from.x.v)) / std::hypot(dx, dy);
}

} // namespace

TEST_CASE("two surveys are compared at one scale: an unchanged place stands on the diagonal, a thinner one under it") {
  const auto pages = drawn(compose::comparison_plot({.places = {{5.8, 5.8, "PW 1", ""}, {5.6, 5.2, "PW 2", ""}},
                                                     .doubt = 0.2,
                                                     .both = axis(4, 6, {{4, "4"}, {5, "5"}, {6, "6"}}, "before"),
                                                     .after_title = "after"},
                                                    "two places"));
  const auto found = dots(pages);
  REQUIRE(found.size() == 2);
  double scale = 0;
  for (const auto &[from, to] : lines(pages)) {
    const double dx = to.x.v - from.x.v, dy = from.y.v - to.y.v;
    if (dx < 10 || std::abs(dx - dy) > 1e-6) continue;
    scale = dx / 2; // the diagonal spans 2 mm of steel
    CHECK(off(found[0], from, to) == Approx(0).margin(0.01));
    CHECK(off(found[1], from, to) == Approx(0.4 * scale / std::sqrt(2.0)).margin(0.01));
  }
  CHECK(scale > 0);
  CHECK(found[1].y.v - found[0].y.v == Approx(0.6 * scale).margin(0.01)); // 5.8 against 5.2: y runs down
}

TEST_CASE("maxima that follow a Gumbel law exactly lie on its line") {
  // Quantile x = mu - beta ln(-ln p): NIST/SEMATECH e-Handbook 1.3.6.6.16, extreme value type I (maximum).
  constexpr double mu = 1.2, beta = 0.35;
  std::vector<content::XY> maxima;
  for (const double p : {0.1, 0.3, 0.5, 0.7, 0.9}) maxima.push_back({-std::log(-std::log(p)), mu - beta * std::log(-std::log(p))});
  const auto pages = drawn(compose::extreme_value_plot({.maxima = maxima,
                                                        .line = {{-2, mu - 2 * beta}, {4, mu + 4 * beta}},
                                                        .low = {},
                                                        .high = {},
                                                        .limits = {{2.0, "4.0 left"}},
                                                        .reduced = axis(-2, 4, {{0.3665, "0.5"}, {2.2504, "0.9"}}, "probability"),
                                                        .depth = axis(0, 3, {{0, "0"}, {1, "1"}, {2, "2"}, {3, "3"}}, "depth, mm")},
                                                       "five blocks"));
  const auto found = dots(pages);
  REQUIRE(found.size() == maxima.size());
  bool on_line = false;
  for (const auto &[from, to] : lines(pages)) {
    bool all = std::abs(from.y.v - to.y.v) > 10 && std::abs(from.x.v - to.x.v) > 10;
    for (const auto &at : found) all = all && off(at, from, to) < 0.01;
    on_line = on_line || all;
  }
  CHECK(on_line);
}
