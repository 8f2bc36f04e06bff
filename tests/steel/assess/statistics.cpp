#include "strakebook/steel/assess/statistics.h"

#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"

using namespace strakebook;
using assess::Length;
using assess::Ratio;
using policy::PercentileType;
using sample::length;

namespace {

std::vector<Length> lengths(const std::vector<std::string> &figures) {
  std::vector<Length> out;
  for (const auto &figure : figures) out.push_back(length(figure));
  return out;
}

/// NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2: twelve gauge measurements.
std::vector<Length> nist_gauge_values() {
  return lengths({"95.1772", "95.1567", "95.1937", "95.1959", "95.1442", "95.0610", "95.1591", "95.1195", "95.1065", "95.0925",
                  "95.1990", "95.1682"});
}

/// "num/den" of a millimetre in figures: exact where the decimals are.
std::string mm(Ratio nm, int places) { return base::to_text(base::round_to({nm.num, nm.den * 1'000'000}, places)); }

sample::SurveyBuilder ten_marks() {
  return sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks(
      "PW", {"5.8", "5.7", "5.9", "5.6", "5.8", "5.5", "5.9", "5.7", "5.8", "5.6"});
}

} // namespace

// 95.1981 is printed in NIST/SEMATECH 7.2.6.2, which defines the percentile as type 6 does; 95.19568 and 95.1972433 are
// worked from the same data by R 4.2, quantile(type = 7) and (type = 8). Types: Hyndman and Fan 1996.
TEST_CASE("percentiles of types 6, 7 and 8: the 90th of the gauge values of NIST/SEMATECH 7.2.6.2") {
  const auto values = nist_gauge_values();
  const Ratio part{90, 100};
  CHECK(mm(assess::percentile(values, part, PercentileType::six), 4) == "95.1981");
  CHECK(mm(assess::percentile(values, part, PercentileType::seven), 5) == "95.19568");
  CHECK(mm(assess::percentile(values, part, PercentileType::eight), 7) == "95.1972433");
  CHECK(assess::percentile(values, part, PercentileType::six) == Ratio{95'198'070, 1});
  CHECK(assess::percentile(values, part, PercentileType::eight) == Ratio{285'591'730, 3});
}

TEST_CASE("a percentile never leaves the sample, and its order does not matter") {
  const auto one = lengths({"5.0"}), three = lengths({"5.2", "5.0", "5.1"});
  for (const auto type : {PercentileType::six, PercentileType::seven, PercentileType::eight}) {
    CHECK(assess::percentile(one, {1, 10}, type) == Ratio{5'000'000, 1});
    CHECK(assess::percentile(three, {1, 100}, type) >= Ratio{5'000'000, 1});
    CHECK(assess::percentile(three, {99, 100}, type) <= Ratio{5'200'000, 1});
    CHECK(assess::percentile(three, {1, 2}, type) == Ratio{5'100'000, 1});
  }
  CHECK(assess::percentile(three, {1, 100}, PercentileType::six) == Ratio{5'000'000, 1});
  CHECK(assess::percentile(three, {1, 4}, PercentileType::six) == Ratio{5'000'000, 1});  // place 1 exactly
  CHECK(assess::percentile(three, {3, 4}, PercentileType::six) == Ratio{5'200'000, 1});  // place 3 exactly
}

// NIST/SEMATECH e-Handbook 1.3.5.2, confidence limits for the mean: heat flow data, n 195, mean 9.261460, sd 0.022789 and the
// interval as printed there. Mean and deviation are rounded in print, so the interval may differ by one in its last place.
TEST_CASE("the interval of a mean: NIST/SEMATECH 1.3.5.2") {
  const auto interval = assess::mean_interval(9.261460, 0.022789, 195, 0.95);
  CHECK(interval.low == Approx(9.258242).margin(1e-6).epsilon(0));
  CHECK(interval.high == Approx(9.264679).margin(1e-6).epsilon(0));
}

// Tables of Student's t and of the normal distribution; the figures to more places by R 4.2, qt(0.975, 9) and qnorm(0.95).
TEST_CASE("quantiles of Student's t and of the normal distribution") {
  CHECK(assess::student_quantile(0.975, 9) == Approx(2.262157).margin(5e-7).epsilon(0));
  CHECK(assess::normal_quantile(0.95) == Approx(1.644854).margin(5e-7).epsilon(0));
}

// Definition: NIST/SEMATECH e-Handbook 7.2.6.3. Figures by R 4.2, qt(confidence, n - 1, ncp = qnorm(share) * sqrt(n)) / sqrt(n).
TEST_CASE("one-sided tolerance factors, exact, by the noncentral t") {
  CHECK(assess::tolerance_factor(10, 0.95, 0.95) == Approx(2.9110).margin(5e-5).epsilon(0));
  CHECK(assess::tolerance_factor(20, 0.95, 0.95) == Approx(2.396002).margin(5e-7).epsilon(0));
  CHECK(assess::tolerance_factor(43, 0.90, 0.99) == Approx(1.8739536).margin(5e-8).epsilon(0));
}

// As the sample grows k comes down to the normal quantile; the approximation is that of NIST/SEMATECH 7.2.6.3.
TEST_CASE("a tolerance factor is reckoned for the largest zones too") {
  double before = assess::tolerance_factor(2, 0.95, 0.95);
  for (const int n : {10, 100, 1200, 24000}) {
    CAPTURE(n);
    const double k = assess::tolerance_factor(n, 0.95, 0.95), z = assess::normal_quantile(0.95);
    const double a = 1 - z * z / (2.0 * (n - 1)), b = z * z - z * z / n;
    CHECK(k < before);
    CHECK(k > z);
    CHECK(k == Approx((z + std::sqrt(z * z - a * b)) / a).epsilon(n < 100 ? 0.03 : 0.002));
    before = k;
  }
}

// Standard deviation of 5.8 5.7 5.9 5.6 5.8 5.5 5.9 5.7 5.8 5.6 by hand: mean 5.73, sum of squares 0.161, over 9, root.
TEST_CASE("a zone's used marks together: deviation, interval of the mean, low percentile, tolerance limit") {
  const auto result = sample::assessed(ten_marks().made);
  REQUIRE(result.zones[0].statistics);
  const auto &found = *result.zones[0].statistics;
  CHECK(found.deviation == Length::nanometres(133'750)); // 0.13374935...
  // Interval and limit from the formulas with t 2.262157 and k 2.911022 (R 4.2).
  CHECK(base::mm_text(found.mean_low, 4) == "5.6343");
  CHECK(base::mm_text(found.mean_high, 4) == "5.8257");
  CHECK(base::mm_text(found.tolerance_limit.value(), 4) == "5.3407");
  CHECK(found.percentile_nm == Ratio{5'510'000, 1}); // place 1.1: a tenth of the way from 5.5 to 5.6
}

TEST_CASE("only used marks count, and too few of them give no statistics") {
  auto survey = ten_marks();
  const auto alone = sample::assessed(survey.made).zones[0].statistics;
  survey.unread("PW", survey::Status::no_echo).unread("PW", survey::Status::rejected).on_doubler("PW", "3.9");
  const auto with_others = sample::assessed(survey.made).zones[0].statistics;
  REQUIRE((alone && with_others));
  CHECK(with_others->deviation == alone->deviation);
  CHECK(with_others->percentile_nm == alone->percentile_nm);

  auto policy = sample::house();
  policy.statistics.least_for_statistics = 10;
  CHECK(sample::assessed(survey.made, policy).zones[0].statistics);
  policy.statistics.least_for_statistics = 11;
  CHECK_FALSE(sample::assessed(survey.made, policy).zones[0].statistics);
  policy.statistics.least_for_statistics = 0;
  auto single = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8"});
  CHECK_FALSE(sample::assessed(single.made, policy).zones[0].statistics);
}

TEST_CASE("marks that are all alike have no scatter; marks too far apart give no tolerance limit") {
  const auto alike = assess::statistics_of(lengths({"5.8", "5.8", "5.8", "5.8"}), sample::house().statistics).value();
  CHECK(alike.deviation == Length{});
  CHECK(alike.mean_low == length("5.8"));
  CHECK(alike.tolerance_limit == length("5.8"));
  const auto apart = assess::statistics_of(lengths({"0.5", "6.0", "0.5", "6.0"}), sample::house().statistics).value();
  CHECK_FALSE(apart.tolerance_limit);
}

TEST_CASE("statistics as JSON say by which rule they were made") {
  const auto survey = ten_marks().made;
  const auto json = assess::json(survey, sample::assessed(survey));
  CHECK(json["statistics"]["percentile_type"] == 6);
  CHECK(json["statistics"]["confidence"] == "19/20");
  CHECK(json["statistics"]["least_for_statistics"] == 4);
  CHECK(json["zones"][0]["statistics"]["deviation"] == "0.13375");
  CHECK(json["zones"][0]["statistics"]["percentile"] == "551/100");
  auto three = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8", "5.7", "5.9"});
  CHECK((assess::json(three.made, sample::assessed(three.made)))["zones"][0]["statistics"].is_null());
}
