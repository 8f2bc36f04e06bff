#include "strakebook/steel/assess/statistics.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include "strakebook/base/approximate.h"
#include "strakebook/steel/policy/fraction.h"

namespace strakebook::assess {

using policy::Fraction;

namespace {

double approximate(base::Wide num, base::Wide den) { return static_cast<double>(num) / static_cast<double>(den); }

Fraction edge_of(policy::PercentileType type) {
  switch (type) {
  case policy::PercentileType::six: return {0, 1};
  case policy::PercentileType::seven: return {1, 1};
  case policy::PercentileType::eight: return {1, 3};
  }
  throw std::logic_error("a percentile type without a definition");
}

/// Where the quantile stands in the ordered sample, counted from 1.
Fraction place_of(std::size_t n, Ratio part, policy::PercentileType type) {
  const Fraction a = edge_of(type);
  const Fraction span = Fraction{static_cast<std::int64_t>(n) + 1, 1} + Fraction{-2, 1} * a;
  return a + policy::fraction(part) * span;
}

struct Sums {
  base::Wide n = 0, sum = 0, squares = 0;
};

Sums sums_of(std::span<const Length> sample) {
  Sums sums;
  for (const Length figure : sample) {
    ++sums.n;
    sums.sum = policy::sum(sums.sum, figure.nm());
    sums.squares = policy::sum(sums.squares, policy::square(figure.nm()));
  }
  return sums;
}

Length down(double nm) { return Length::nanometres(static_cast<std::int64_t>(std::floor(nm))); }
Length up(double nm) { return Length::nanometres(static_cast<std::int64_t>(std::ceil(nm))); }

} // namespace

Ratio percentile(std::span<const Length> sample, Ratio part, policy::PercentileType type) {
  std::vector<Length> ordered(sample.begin(), sample.end());
  std::ranges::sort(ordered);
  const Fraction place = place_of(ordered.size(), part, type);
  const auto whole = place.num / place.den;
  if (whole < 1) return {ordered.front().nm(), 1};
  if (whole >= static_cast<std::int64_t>(ordered.size())) return {ordered.back().nm(), 1};
  const auto at = static_cast<std::size_t>(whole);
  const Length below = ordered[at - 1], above = ordered[at];
  const Fraction beyond = policy::lowest(place.num % place.den, place.den);
  return policy::ratio(Fraction{below.nm(), 1} + beyond * Fraction{(above - below).nm(), 1});
}

double sample_deviation(std::span<const Length> sample) {
  const Sums sums = sums_of(sample);
  const auto about_mean = policy::product(sums.n, sums.squares) - policy::square(sums.sum);
  return std::sqrt(approximate(about_mean, sums.n * (sums.n - 1)));
}

double normal_quantile(double p) { return boost::math::quantile(boost::math::normal(), p); }

double student_quantile(double p, int degrees) { return boost::math::quantile(boost::math::students_t(degrees), p); }

MeanInterval mean_interval(double mean, double deviation, int n, double confidence) {
  const double half = student_quantile((1 + confidence) / 2, n - 1) * deviation / std::sqrt(n);
  return {mean - half, mean + half};
}

double tolerance_factor(int n, double share, double confidence) {
  const double root = std::sqrt(n);
  return boost::math::quantile(boost::math::non_central_t(n - 1, normal_quantile(share) * root), confidence) / root;
}

std::optional<Statistics> statistics_of(std::span<const Length> sample, const policy::StatisticsRule &rule) {
  constexpr int least_for_scatter = 2;
  const auto n = static_cast<int>(sample.size());
  if (n < std::max(rule.least_for_statistics, least_for_scatter)) return std::nullopt;
  const Sums sums = sums_of(sample);
  const double mean = approximate(sums.sum, sums.n), deviation = sample_deviation(sample);
  const MeanInterval interval = mean_interval(mean, deviation, n, base::approximate(rule.confidence));
  const double limit = mean - tolerance_factor(n, base::approximate(rule.share), base::approximate(rule.confidence)) * deviation;
  return Statistics{.deviation = up(deviation),
                    .mean_low = down(interval.low),
                    .mean_high = up(interval.high),
                    .percentile_nm = percentile(sample, rule.percentile, rule.percentile_type),
                    .tolerance_limit = limit > 0 ? std::optional(down(limit)) : std::nullopt};
}

} // namespace strakebook::assess
