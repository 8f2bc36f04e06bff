#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using sample::contains;

namespace {

std::string results_of(const sample::Composed &sample) {
  return sample::section_text(compose::compose(sample.source()), "results");
}

} // namespace

TEST_CASE("a zone with fewer used marks than the policy asks has a dash for each statistic, and the reason under the table") {
  const auto text = results_of(sample::small_survey());
  CHECK(contains(text, "wind-and-water\n8 of 10\n5.5\n5.71\n5.9\n–\n–\n–\n–\n"));
  CHECK(contains(text, "A dash: fewer than 10 marks used"));
}

// 5.8 5.7 5.6 5.6 5.5 and 5.9 5.8 5.8; by R 4.2: sd 0.1356203, t.test interval 5.599119 to 5.825881, quantile(0.1, type = 6)
// 5.5, mean - qt(0.95, 7, ncp = qnorm(0.95) * sqrt(8)) / sqrt(8) * sd = 5.280238.
TEST_CASE("a zone with enough used marks stands in figures: deviation, interval of the mean, low percentile, tolerance limit") {
  auto sample = sample::small_survey();
  sample.house.policy.statistics.least_for_statistics = 8;
  assess_again(sample);
  const auto text = results_of(sample);
  CHECK(contains(text, "wind-and-water\n8 of 10\n5.5\n5.71\n5.9\n0.136\n5.60–5.83\n5.5\n5.28\n"));
  CHECK(contains(text, "with 95 % confidence 95 % of such marks keep at least this, normal scatter assumed; computed"));
  CHECK(contains(text, "type 6 of Hyndman and Fan"));
}

TEST_CASE("with few figures at a mark the readings stand in the narrow table: the words of a mark not used in place of its loss") {
  auto sample = sample::small_survey();
  const auto narrow = results_of(sample);
  CHECK_FALSE(contains(narrow, "lowest of row"));
  CHECK(contains(narrow, "4\n–\nno echo\n"));
  CHECK(contains(narrow, "doubler · outer only\n"));

  auto &repeats = sample.survey.marks.front().repeats;
  repeats.insert(repeats.end(), 3, repeats.back());
  const auto wide = results_of(sample);
  CHECK(contains(wide, "lowest of row"));
  CHECK(contains(wide, "4\n–\n–\n"));
}
