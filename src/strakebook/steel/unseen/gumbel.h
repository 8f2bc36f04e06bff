#pragma once

#include <span>

/// Gumbel's law of largest values, F(x) = exp(-exp(-z)), z = (x - location) / scale, fitted to block maxima. Reckoned in doubles,
/// in the unit of the sample: no verdict turns on it. Formulas: S. Coles, An Introduction to Statistical Modeling of Extreme
/// Values, Springer 2001, chapter 3.
namespace strakebook::unseen {

struct Gumbel {
  double location = 0, scale = 1; ///< scale > 0
};

/// ln F(x), and ln(1 - F(x)) without loss of figures in the upper tail.
double log_below(const Gumbel &law, double x);
double log_above(const Gumbel &law, double x);

/// A law with its doubt: standard errors and covariance from the inverse of the observed information matrix.
struct Fit {
  Gumbel law;
  double location_error = 0, scale_error = 0, covariance = 0;
  double minus_log_likelihood = 0;
};

/// By maximum likelihood. The scale is the one root of b - mean + sum x exp(-x/b) / sum exp(-x/b), found to the last figures of
/// a double. The sample is not all alike.
Gumbel by_likelihood(std::span<const double> sample);
Fit fit(std::span<const double> sample);

/// By L-moments: scale = l2 / ln 2, location = l1 - Euler's constant times the scale (J. R. M. Hosking, J. R. Statist. Soc. B 52,
/// 105, 1990), l1 and l2 by their unbiased estimators. Two figures or more.
Gumbel by_l_moments(std::span<const double> sample);

/// -ln(-ln(1 - 1/period)): where the level of a return period stands on extreme value paper. period > 1.
double reduced_variate(double period);
/// -ln(-ln p): the same of a probability, 0 < p < 1.
double reduced_of_probability(double p);

double level_at(const Gumbel &law, double reduced); ///< location + scale times the reduced variate
/// Standard error of that level by the delta method, from the fit's covariance.
double level_error(const Fit &fit, double reduced);

} // namespace strakebook::unseen
