#include "strakebook/steel/unseen/goodness.h"

#include <algorithm>
#include <random>
#include <vector>

namespace strakebook::unseen {

namespace {

/// A figure strictly between 0 and 1: the middle of one of 2^52 equal steps.
double drawn(std::mt19937_64 &engine) {
  constexpr int spare_bits = 12;
  constexpr auto halves = static_cast<double>(std::uint64_t{2} << (64 - spare_bits));
  return static_cast<double>(2 * (engine() >> spare_bits) + 1) / halves;
}

} // namespace

double anderson_darling(std::span<const double> sample, const Gumbel &law) {
  std::vector<double> ordered(sample.begin(), sample.end());
  std::ranges::sort(ordered);
  const auto n = static_cast<double>(ordered.size());
  double sum = 0, odd = 1;
  for (std::size_t i = 0; i < ordered.size(); ++i, odd += 2)
    sum += odd * (log_below(law, ordered[i]) + log_above(law, ordered[ordered.size() - 1 - i]));
  return -n - sum / n;
}

double chance_of(double a2, int n, int samples) {
  std::mt19937_64 engine(seed);
  std::vector<double> sample(static_cast<std::size_t>(n));
  int as_far = 0;
  for (int i = 0; i < samples; ++i) {
    for (double &x : sample) x = reduced_of_probability(drawn(engine));
    if (anderson_darling(sample, by_likelihood(sample)) >= a2) ++as_far;
  }
  return (1 + static_cast<double>(as_far)) / (1 + samples);
}

} // namespace strakebook::unseen
