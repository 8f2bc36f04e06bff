#include "strakebook/steel/unseen/gumbel.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "steel/unseen/port_pirie.h"
#include "strakebook/steel/unseen/goodness.h"

using namespace strakebook;

namespace {

Approx exactly(double figure, double margin) { return Approx(figure).margin(margin).epsilon(0); }

/// Drawn by R 4.2.2 with evd 2.3-6.1: set.seed(20261128); round(rgumbel(12, 1.5, 0.4), 1), then round(rgumbel(30, 0.8, 0.25), 2).
const std::vector<double> twelve = {2.2, 1.2, 1.4, 1.1, 1.6, 1.5, 1.3, 1.3, 1.4, 1.3, 1.2, 1.4};
const std::vector<double> thirty = {0.79, 0.62, 0.82, 1.04, 1.27, 1.68, 1.39, 1.29, 0.6,  1.11, 1.25, 0.74, 0.97, 1.14, 1.57,
                                    0.8,  0.65, 0.48, 1.15, 1.35, 0.58, 1.72, 0.59, 0.84, 1.22, 0.93, 0.8,  1.33, 0.94, 0.88};

struct Expect {
  double location, scale, location_error, scale_error, covariance, minus_log_likelihood, a2;
};

void check_fit(const std::vector<double> &sample, const Expect &expect) {
  const auto found = unseen::fit(sample);
  CHECK(found.law.location == exactly(expect.location, 5e-10));
  CHECK(found.law.scale == exactly(expect.scale, 5e-10));
  CHECK(found.location_error == exactly(expect.location_error, 5e-8));
  CHECK(found.scale_error == exactly(expect.scale_error, 5e-8));
  CHECK(found.covariance == exactly(expect.covariance, 5e-10));
  CHECK(found.minus_log_likelihood == exactly(expect.minus_log_likelihood, 5e-8));
  CHECK(unseen::anderson_darling(sample, found.law) == exactly(expect.a2, 5e-8));
}

} // namespace

// Coles 2001 prints 3.87 and 0.195 with standard errors 0.03 and 0.019 (section 3.4.1). To more places by R 4.2.2: uniroot on
// the likelihood equation to 1e-15, solve() on the observed information, and evd's pgumbel for A2. evd's own optimiser stops at
// 3.8694458 and 0.1948908.
TEST_CASE("Port Pirie by maximum likelihood: location, scale, their errors, likelihood and A2") {
  check_fit(sample::port_pirie(), {3.8694435435, 0.1948894464, 0.02549386, 0.01885484, 0.0001527124, -4.21768190, 0.16891056});
}

// The levels at 10, 50 and 100 years by evd's qgumbel; their errors by the delta method (Coles 2001, section 3.3.3), in R.
TEST_CASE("Port Pirie: return levels and their standard errors") {
  const auto found = unseen::fit(sample::port_pirie());
  const auto check = [&](double period, double level, double error) {
    const double reduced = unseen::reduced_variate(period);
    CHECK(unseen::level_at(found.law, reduced) == exactly(level, 5e-8));
    CHECK(unseen::level_error(found, reduced) == exactly(error, 5e-8));
  };
  check(10, 4.30801639, 0.05601417);
  check(50, 4.62989021, 0.08517216);
  check(100, 4.76596408, 0.09786682);
}

// beta = l2 / ln 2 and mu = l1 - 0.5772 beta (Hosking 1990), in R 4.2.2.
TEST_CASE("Port Pirie by L-moments") {
  const auto law = unseen::by_l_moments(sample::port_pirie());
  CHECK(law.location == exactly(3.8684909161, 5e-10));
  CHECK(law.scale == exactly(0.1942505640, 5e-10));
}

// The same R code; evd's fgev(shape = 0) gives 1.2997717 and 0.1691562 (se 0.0508834, 0.0399285), and 0.8583156 and 0.2806480
// (se 0.0541103, 0.0403497), both to its own loose stop.
TEST_CASE("two samples drawn by evd, fitted as R fits them") {
  check_fit(twelve, {1.2997688517, 0.1691566388, 0.05088343, 0.03993497, 0.0005712604, -1.62157932, 0.37342404});
  check_fit(thirty, {0.8583138827, 0.2806458964, 0.05410982, 0.04035134, 0.0007017756, 8.95000380, 0.30934211});
  CHECK(unseen::by_l_moments(twelve).scale == exactly(0.2043817975, 5e-10));
  CHECK(unseen::by_l_moments(thirty).location == exactly(0.8551071903, 5e-10));
  const auto fit = unseen::fit(thirty);
  CHECK(unseen::level_at(fit.law, unseen::reduced_variate(200)) == exactly(2.34456183, 5e-8));
  CHECK(unseen::level_error(fit, unseen::reduced_variate(200)) == exactly(0.23669721, 5e-8));
}

TEST_CASE("the likelihood equations hold at the fit to the last figures") {
  for (const auto &sample : {sample::port_pirie(), twelve, thirty}) {
    const auto law = unseen::by_likelihood(sample);
    double weight = 0, weighted = 0, sum = 0;
    for (const double x : sample) {
      const double z = (x - law.location) / law.scale;
      weight += std::exp(-z);
      weighted += z * std::exp(-z);
      sum += z;
    }
    const auto n = static_cast<double>(sample.size());
    CHECK(weight / n == exactly(1, 1e-12));
    CHECK((sum - weighted) / n == exactly(1, 1e-12));
  }
}

TEST_CASE("what is measured in other units or from another place is fitted by the same law") {
  const auto law = unseen::by_likelihood(thirty);
  auto moved = thirty;
  for (double &x : moved) x = 25.4 * x + 1000;
  const auto other = unseen::by_likelihood(moved);
  CHECK(other.location == exactly(25.4 * law.location + 1000, 1e-9));
  CHECK(other.scale == exactly(25.4 * law.scale, 1e-9));
  std::ranges::reverse(moved);
  CHECK(unseen::by_likelihood(moved).scale == exactly(other.scale, 1e-12));
}

TEST_CASE("a sample with one figure far from all others, and one of two figures, are fitted") {
  for (const auto &sample : {std::vector<double>{1, 1, 1, 1, 1, 1, 1, 1, 1, 50}, std::vector<double>{1, 2}}) {
    const auto law = unseen::by_likelihood(sample);
    CHECK(law.scale > 0);
    double weight = 0;
    for (const double x : sample) weight += std::exp(-(x - law.location) / law.scale);
    CHECK(weight == exactly(static_cast<double>(sample.size()), 1e-10));
  }
}

// Critical values for Gumbel's law with both figures estimated, A2 (1 + 0.2 / sqrt n): 0.637, 0.757 and 1.038 at 10, 5 and 1 %
// (Stephens 1977), from memory. 19 999 samples: the standard error of 5 % is 0.15 %.
TEST_CASE("the chance of a fit by drawn samples agrees with tabled points of A2") {
  const auto at = [](double point, int n) { return unseen::chance_of(point / (1 + 0.2 / std::sqrt(n)), n, 19'999); };
  CHECK(at(0.637, 65) == exactly(0.10, 0.012));
  CHECK(at(0.757, 65) == exactly(0.05, 0.008));
  CHECK(at(1.038, 65) == exactly(0.01, 0.004));
  CHECK(at(0.757, 20) == exactly(0.05, 0.008));
}

TEST_CASE("the same sample has the same chance every time; a worse fit has a lesser one, and never none") {
  CHECK(unseen::chance_of(0.4, 20, 499) == unseen::chance_of(0.4, 20, 499));
  CHECK(unseen::chance_of(0.4, 20, 499) > unseen::chance_of(0.8, 20, 499));
  CHECK(unseen::chance_of(0, 20, 499) == 1);
  CHECK(unseen::chance_of(1e9, 20, 499) == 1.0 / 500);
}
