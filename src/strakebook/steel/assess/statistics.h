#pragma once

#include <span>

#include "strakebook/steel/assess/assessment.h"

/// What a sample says of where it came from. Percentiles are exact; the rest is printed for a reader and no verdict turns on
/// it, so it is reckoned in doubles, with the distributions of Boost.Math.
namespace strakebook::assess {

/// The part-th quantile of a sample of one or more, exact, in nanometres; 0 < part < 1. It stands at the place
/// h = a + part (n + 1 - 2a) of the ordered sample, between two figures in proportion, and never outside the sample:
/// a = 0, 1, 1/3 for types 6, 7, 8 (R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361-365).
Ratio percentile(std::span<const Length> sample, Ratio part, policy::PercentileType type);

/// Root of the sum of squares about the mean over n - 1; nm, for n >= 2. The square is exact.
double sample_deviation(std::span<const Length> sample);

double normal_quantile(double p);                    ///< of the standard normal distribution, 0 < p < 1
double student_quantile(double p, int degrees);      ///< of Student's t, 0 < p < 1, degrees >= 1

struct MeanInterval { double low, high; };
/// Two-sided interval of a mean by Student's t with n - 1 degrees of freedom (NIST/SEMATECH e-Handbook 1.3.5.2), of n >= 2
/// independent figures; in the unit of mean and deviation.
MeanInterval mean_interval(double mean, double deviation, int n, double confidence);

/// One-sided tolerance factor k, exact: with this confidence at least the given share of a normal population lies above
/// mean - k deviation, of n >= 2 independent figures. k = t / sqrt n, t the quantile of the noncentral t with n - 1 degrees of
/// freedom and noncentrality z sqrt n (NIST/SEMATECH e-Handbook 7.2.6.3).
double tolerance_factor(int n, double share, double confidence);

/// All of it for one sample; nullopt for fewer figures than the rule asks (never for fewer than two).
std::optional<Statistics> statistics_of(std::span<const Length> sample, const policy::StatisticsRule &rule);

} // namespace strakebook::assess
