#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using sample::contains;

namespace {

base::Measured mm(const std::string &text) {
  base::MeasuredError wrong;
  return base::parse_measured(text, base::Unit::millimetre, wrong).value();
}

/// The small survey with a gauge that reads 0.20 high on its block and has no certificate that holds.
sample::Composed doubtful() {
  auto sample = sample::small_survey();
  auto &gauge = sample.survey.gauges.front();
  gauge.certificate_until->value = {2026, 5, 14};
  gauge.before.reset();
  gauge.after = mm("5.20");
  assess_again(sample);
  return sample;
}

std::string section(const sample::Composed &sample, const std::string &id) {
  return sample::section_text(compose::compose(sample.source()), id);
}

} // namespace

TEST_CASE("a budget is a table: each component, how it is given, u and degrees; the sum; the factor and w") {
  auto sample = sample::small_survey();
  auto &gauge = sample.survey.gauges.front();
  gauge.u.reset();
  gauge.u_basis = {};
  gauge.doubt = {{.id = "resolution", .half_width = mm("0.05"), .why = {.text = "steps of 0.1", .span = {}}},
                 {.id = "repeatability", .u = mm("0.08"), .degrees = base::Decimal{9, 0}}};
  assess_again(sample);
  const auto text = section(sample, "instruments");
  CHECK(contains(text, "resolution\nwithin 0.05 mm either way, equally likely: that over root 3; steps of 0.1\n0.0289\ninfinite\n"));
  CHECK(contains(text, "repeatability\nstandard uncertainty\n0.0800\n9\n"));
  // root of 0.05^2 / 3 + 0.08^2 = 0.085049; nu_eff 9 (0.0850.. / 0.08)^4 = 11.49; t of 95 % at 11 is 1.795885
  CHECK(contains(text, "doubt w = 1.796 u = 0.1528 mm\n0.0851\n11\n"));
  CHECK(contains(text, "Student's one-sided factor at 95 %"));
}

TEST_CASE("a sound gauge prints its checks with the drift, and no word of estimates") {
  const auto text = section(sample::small_survey(), "instruments");
  CHECK(contains(text, "5.00\n5.00\n0.00\n5.01\n+0.01\n+0.01\nagrees\n"));
  CHECK(contains(text, "Marks with repeats more than 0.3 mm apart: 0."));
  CHECK_FALSE(contains(text, "indicative"));
  CHECK_FALSE(contains(text, "velocity-type"));
  CHECK_FALSE(contains(section(sample::small_survey(), "results"), "low side"));
}

TEST_CASE("an indicative gauge: why, both estimates side by side, and what is to be retaken") {
  const auto sample = doubtful();
  const auto text = section(sample, "instruments");
  CHECK(contains(text, "are indicative: its certificate ran out on 14 May 2026, before the inspection, the block "
                       "check before the readings is missing and the block check after the readings differs."));
  CHECK(contains(text, "14 May 2026, before the inspection"));
  CHECK(contains(text, "5.00\nnot stated\n–\n5.20\n+0.20\n–\ndiffers, not complete"));
  CHECK(contains(text, "after: 5.20 on 5.00"));
  CHECK(contains(text, "To be retaken, indicative and within 0.3 mm of a limit ("));
}

TEST_CASE("the low side stands beside what was displayed, at every verdict") {
  const auto sample = doubtful();
  const auto &pit = sample.assessment.pits.front(); // 5.6 x 5.00 / 5.20 - 1.2 is 4.1846, 5.6 - 0.20 - 1.2 is 4.20
  REQUIRE(pit.low == base::Length::nanometres(4'184'615));
  CHECK(pit.remaining == base::Length::micrometres(4400));
  const auto one = section(sample, "answer");
  CHECK(contains(one, "4.18 mm [too-close]"));
  CHECK(contains(one, "Low side of 4.4 displayed; indicative."));
  const auto results = section(sample, "results");
  CHECK(contains(results, "4.4\n4.18\n"));
  CHECK(contains(results, "under pit P1, PW 3.4, 4.4 mm, doubt 0.23, judged on the low side by 4.18, indicative"));
  CHECK(contains(results, "4.0 mm remaining (governs)\n4.00\n4.18\n+0.18\n"));
  const auto decided = section(sample, "assessment");
  CHECK(contains(decided, "Readings here are indicative."));
  CHECK(contains(decided, "P1 displayed 4.4; it is judged on the low side, by 4.18 mm."));
  CHECK(contains(decided, "Doubt here 0.23 mm, 1.645 times u"));
}

TEST_CASE("single echoes are spoken of by their film, and raw figures stay") {
  auto sample = sample::small_survey();
  for (auto &mark : sample.survey.marks)
    mark.surface = survey::Surface::coated_single_echo;
  sample.survey.marks.front().coating = mm("300 um");
  assess_again(sample);
  const auto text = section(sample, "instruments");
  CHECK(contains(text, "1 marks were read single echo through a coating of 300 um. Such an echo counts the film as 2 to 2.5 times"));
  CHECK(contains(text, "0.60 to 0.75 mm"));
  CHECK(contains(text, "cannot be estimated"));
  CHECK(contains(section(sample, "results"), "single echo, 0.60 to 0.75 high"));
}

TEST_CASE("the rule that reduces the repeats is the one that the survey declares") {
  auto sample = sample::small_survey();
  CHECK(contains(section(sample, "results"), "the least figure displayed, which is what remains"));
  for (auto &mark : sample.survey.marks)
    mark.reduce = survey::Reduction::mean_of_repeats;
  assess_again(sample);
  CHECK(contains(section(sample, "results"), "Remaining is the mean of the figures displayed"));
  CHECK(contains(section(sample, "instruments"), "the mean of the repeats displayed there"));
}
