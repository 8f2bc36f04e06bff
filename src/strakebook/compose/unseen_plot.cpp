#include <algorithm>
#include <array>
#include <cmath>

#include "strakebook/compose/plots.h"
#include "strakebook/compose/results_parts.h"
#include "strakebook/compose/subjects.h"
#include "strakebook/compose/thickness.h"
#include "strakebook/compose/unseen.h"
#include "strakebook/steel/assess/statistics.h"

/// Block maxima and their law, on paper on which such a law is a straight line.
namespace strakebook::compose {

using content::plain;
using content::XY;

namespace {

constexpr int curve_steps = 40;
constexpr double name_room = 0.08; ///< of the depth axis: two names nearer than this would touch
constexpr double room_before = 0.3; ///< of the reduced variate, left of the first dot
constexpr std::array<int, 10> periods_shown = {2, 5, 10, 20, 50, 100, 200, 500, 1000, 5000};

double share_of(Ratio r) { return static_cast<double>(r.num) / static_cast<double>(r.den); }

/// The k-th of n in order stands at probability k / (n + 1).
std::vector<XY> in_order(const survey::PitBlocks &blocks) {
  auto depths = unseen::depths_mm(blocks);
  std::ranges::sort(depths);
  std::vector<XY> out;
  for (std::size_t i = 0; i < depths.size(); ++i)
    out.push_back({unseen::reduced_of_probability(static_cast<double>(i + 1) / static_cast<double>(depths.size() + 1)), depths[i]});
  return out;
}

/// The line, `errors` standard errors away from it, from one reduced variate to the other; where it is below nought, cut off.
std::vector<XY> curve(const unseen::Fit &fit, double from, double to, double errors) {
  std::vector<XY> out;
  for (int i = 0; i <= curve_steps; ++i) {
    const double at = from + (to - from) * i / curve_steps;
    const double depth = unseen::level_at(fit.law, at) + errors * unseen::level_error(fit, at);
    if (depth >= 0) out.push_back({at, depth});
  }
  return out;
}

PlotAxis period_axis(const Scope &scope, double low, double high) {
  PlotAxis out{.low = low, .high = high, .numbers = {}, .title = scope.say("unseen.one-in")};
  for (const int period : periods_shown)
    if (const double at = unseen::reduced_variate(period); at <= high) out.numbers.emplace_back(at, std::to_string(period));
  return out;
}

PlotAxis depth_axis(const Scope &scope, double deepest) {
  PlotAxis out{.low = 0, .high = 0, .numbers = {}, .title = scope.say("unseen.depth-axis")};
  double step = 0.1;
  for (const double wider : {0.2, 0.5, 1.0, 2.0, 5.0, 10.0})
    if (deepest / step > 6) step = wider;
  const int steps = static_cast<int>(std::ceil(deepest / step));
  for (int i = 0; i <= steps; ++i) out.numbers.emplace_back(i * step, base::to_text({std::llround(i * step * 10), 1}));
  out.high = steps * step;
  return out;
}

/// Depths named at the right: what the whole zone comes to, and where the limit would be reached beside its mean.
std::vector<std::pair<double, std::string>> named_depths(const Scope &scope, const survey::Zone &zone, const unseen::Expected &found, double deepest) {
  std::vector<std::pair<double, std::string>> out = {{found.level, scope.say("unseen.whole-zone", {{"mm", mm_near(found.level)}})}};
  const auto limit = main_limit(scope, zone.id);
  if (!limit || !found.beside_mean) return out;
  const double at_limit = *found.beside_mean + found.level - mm_of(limit->remaining);
  const bool room = std::abs(at_limit - found.level) >= name_room * deepest;
  if (at_limit > 0 && at_limit < deepest && room)
    out.emplace_back(at_limit, scope.say("unseen.limit-left", {{"mm", limit_text(limit->remaining)}}));
  return out;
}

ExtremeValues extreme_values(const Scope &scope, const survey::Zone &zone, const unseen::Expected &found) {
  const auto maxima = in_order(*zone.pit_blocks);
  const double from = maxima.front().x, to = unseen::reduced_variate(share_of(found.period));
  const double errors = assess::normal_quantile((1 + share_of(scope.policy().unseen.confidence)) / 2);
  ExtremeValues out{.maxima = maxima,
                    .line = curve(found.by_likelihood, from, to, 0),
                    .low = curve(found.by_likelihood, from, to, -errors),
                    .high = curve(found.by_likelihood, from, to, errors),
                    .limits = {},
                    .reduced = period_axis(scope, from - room_before, to),
                    .depth = depth_axis(scope, std::max(found.high, maxima.back().y))};
  out.limits = named_depths(scope, zone, found, out.depth.high);
  return out;
}

} // namespace

content::Block maxima_figure(const Scope &scope, Numbering &numbering, const survey::Zone &zone, const unseen::Expected &expected) {
  const std::string n = std::to_string(zone.pit_blocks->deepest.size()), level = mm_near(expected.level);
  content::Figure out;
  out.label = next_figure(scope, numbering);
  out.caption = scope.tell("unseen.plot-caption", {{"zone", plain(capitalised(zone.name.text))}, {"n", plain(n)}, {"confidence", plain(percent(scope, scope.policy().unseen.confidence))}});
  out.panels.push_back({{}, {}, extreme_value_plot(extreme_values(scope, zone, expected), scope.say("unseen.plot-spoken", {{"n", n}, {"zone", zone.name.text}, {"mm", level}})),
                        "figure/deepest/" + zone.id});
  return block(std::move(out), "figure/deepest-" + zone.id);
}

} // namespace strakebook::compose
