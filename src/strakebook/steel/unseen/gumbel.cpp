#include "strakebook/steel/unseen/gumbel.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <vector>

#include <boost/math/constants/constants.hpp>
#include <boost/math/tools/roots.hpp>

namespace strakebook::unseen {

namespace {

double mean_of(std::span<const double> sample) {
  return std::accumulate(sample.begin(), sample.end(), double{}) / static_cast<double>(sample.size());
}

double standard(const Gumbel &law, double x) { return (x - law.location) / law.scale; }

/// Sums over exp(-y/b), y the sample.
struct Weighted {
  double weight = 0, first = 0;
};
Weighted weighted(std::span<const double> sample, double b) {
  Weighted sums;
  for (const double y : sample) {
    const double w = std::exp(-y / b);
    sums.weight += w;
    sums.first += w * y;
  }
  return sums;
}

/// The scale of a sample whose least is nought and whose mean is one: it lies in (0, 1], and the likelihood equation rises there.
double unit_scale(std::span<const double> sample) {
  const auto equation = [&](double b) {
    const Weighted sums = weighted(sample, b);
    return b - 1 + sums.first / sums.weight;
  };
  std::uintmax_t most_steps = std::numeric_limits<double>::digits * 4;
  const auto [low, high] = boost::math::tools::toms748_solve(equation, std::numeric_limits<double>::epsilon(), double{1},
                                                             boost::math::tools::eps_tolerance<double>(), most_steps);
  return (low + high) / 2;
}

} // namespace

double log_below(const Gumbel &law, double x) { return -std::exp(-standard(law, x)); }
double log_above(const Gumbel &law, double x) { return std::log(-std::expm1(log_below(law, x))); }

Gumbel by_likelihood(std::span<const double> sample) {
  const double least = *std::ranges::min_element(sample), spread = mean_of(sample) - least;
  std::vector<double> unit;
  for (const double x : sample) unit.push_back((x - least) / spread);
  const double scale = unit_scale(unit);
  const double mean_weight = weighted(unit, scale).weight / static_cast<double>(unit.size());
  return {.location = least - spread * scale * std::log(mean_weight), .scale = spread * scale};
}

Fit fit(std::span<const double> sample) {
  Fit out{.law = by_likelihood(sample)};
  const auto n = static_cast<double>(sample.size());
  double first = 0, second = 0, sum = 0, weight = 0;
  for (const double x : sample) {
    const double z = standard(out.law, x), w = std::exp(-z);
    sum += z;
    weight += w;
    first += z * w;
    second += z * z * w;
  }
  // Second derivatives of the log likelihood where the first ones vanish, times the scale squared.
  const double location = n, both = first, scale = n + second;
  const double squared = out.law.scale * out.law.scale, determinant = location * scale - both * both;
  out.location_error = std::sqrt(squared * scale / determinant);
  out.scale_error = std::sqrt(squared * location / determinant);
  out.covariance = -squared * both / determinant;
  out.minus_log_likelihood = n * std::log(out.law.scale) + sum + weight;
  return out;
}

Gumbel by_l_moments(std::span<const double> sample) {
  std::vector<double> ordered(sample.begin(), sample.end());
  std::ranges::sort(ordered);
  const auto n = static_cast<double>(ordered.size());
  double rank = 0, weighted_sum = 0;
  for (const double x : ordered) weighted_sum += rank++ * x;
  const double l1 = mean_of(ordered), l2 = 2 * weighted_sum / (n * (n - 1)) - l1;
  const double scale = l2 / boost::math::constants::ln_two<double>();
  return {.location = l1 - boost::math::constants::euler<double>() * scale, .scale = scale};
}

double reduced_variate(double period) { return -std::log(-std::log1p(-1 / period)); }
double reduced_of_probability(double p) { return -std::log(-std::log(p)); }

double level_at(const Gumbel &law, double reduced) { return law.location + law.scale * reduced; }

double level_error(const Fit &fit, double reduced) {
  const double location = fit.location_error * fit.location_error, scale = fit.scale_error * fit.scale_error;
  return std::sqrt(location + 2 * reduced * fit.covariance + reduced * reduced * scale);
}

} // namespace strakebook::unseen
