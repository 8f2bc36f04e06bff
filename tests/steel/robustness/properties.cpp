#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "steel/assess/generated.h"
#include "strakebook/base/wide.h"
#include "strakebook/steel/robustness/robustness.h"

// What holds of every grid, tried on generated surveys.
using namespace strakebook;
using assess::Verdict;
using base::Length;

namespace {

constexpr int rounds = 200;

policy::Policy house() {
  auto house = sample::house();
  for (const char *limit : {"3.0", "3.5", "4.0"}) house.robustness.limits.push_back(sample::length(limit));
  house.robustness.losses = {{20, 100}, {25, 100}, {30, 100}};
  for (const char *doubt : {"0.5", "1", "2"}) house.robustness.doubts.push_back(sample::decimal(doubt));
  return house;
}

survey::Survey generated(sample::Generator &generator) {
  auto survey = generator.survey(2);
  for (auto &zone : survey.zones)
    if (generator.below(2) == 0) zone.original.tolerances = {"EN 10029:1991 A"};
  return survey;
}

/// The verdict from the figures alone, in whole nanometres: u in micrometres, the band of 1.645 and the doubt in thousandths, the
/// share in hundredths. Nothing of the program's arithmetic is in it.
Verdict by_hand(std::int64_t left_nm, std::int64_t original_nm, int percent_left, std::int64_t u2_um2, std::int64_t times_thousandth) {
  using base::Wide;
  const Wide margin = Wide{left_nm} * 100 - Wide{original_nm} * percent_left; // hundredths of a nanometre
  const Wide w2 = Wide{u2_um2} * 1645 * 1645 * times_thousandth * times_thousandth; // (1e-6 um)^2, hundredths of a nm are 1e-5 um
  const Wide m2 = margin * margin * 100; // in (1e-6 um)^2
  if (m2 < w2) return Verdict::too_close;
  return margin >= 0 ? Verdict::meets : Verdict::falls_short;
}

std::int64_t whole(base::Ratio r, int scale) { return r.num * scale / r.den; }

std::int64_t u2_of(const survey::Survey &survey, const assess::Subject &subject) {
  std::map<std::string, std::int64_t> u;
  for (const auto &gauge : survey.gauges) u[gauge.id] = gauge.u->nm() / 1000;
  if (subject.kind == assess::Subject::Kind::plate) {
    for (const auto &mark : survey.marks)
      if (mark.id() == subject.id) return u.at(mark.gauge) * u.at(mark.gauge);
  }
  return -1; // which gauge stood beside a pit is assess's matter
}

} // namespace

TEST_CASE("every combination on plate is what whole-number arithmetic gives") {
  sample::Generator generator(5);
  const auto policy = house();
  int compared = 0, wrong = 0;
  for (int round = 0; round < rounds; ++round) {
    const auto survey = generated(generator);
    const auto assessment = sample::assessed(survey, policy);
    const auto found = robustness::robustness(survey, assessment, policy);
    for (std::size_t z = 0; z < found.zones.size(); ++z)
      for (std::size_t s = 0; s < found.zones[z].grids.size(); ++s) {
        const auto &subject = assessment.zones[z].subjects[s];
        const auto u2 = u2_of(survey, subject);
        if (u2 < 0) continue;
        for (const auto &one : found.zones[z].grids[s].limits) {
          ++compared;
          wrong += one.tried.result.verdict != by_hand(subject.judged().nm(), one.limit.nm(), 100, u2, whole(one.doubt.ratio(), 1000));
        }
        for (const auto &one : found.zones[z].grids[s].losses) {
          ++compared;
          wrong += one.tried.result.verdict != by_hand(subject.judged().nm(), one.original.nm(), static_cast<int>(100 - whole(one.loss, 100)), u2, 1000);
        }
      }
  }
  CHECK(compared > rounds * 20);
  CHECK(wrong == 0);
}

TEST_CASE("the combination that is used gives the assessment's verdict and margin") {
  sample::Generator generator(6);
  const auto policy = house();
  int used = 0, wrong = 0;
  for (int round = 0; round < rounds; ++round) {
    const auto survey = generated(generator);
    const auto assessment = sample::assessed(survey, policy);
    const auto found = robustness::robustness(survey, assessment, policy);
    for (std::size_t z = 0; z < found.zones.size(); ++z) {
      const auto &zone = found.zones[z];
      Verdict gravest = Verdict::meets;
      for (std::size_t s = 0; s < zone.grids.size(); ++s) {
        const auto &given = sample::result_of(assessment.zones[z].subjects[s], zone.criterion);
        gravest = std::max(gravest, given.verdict);
        const auto compare = [&](const auto &all) {
          for (const auto &one : all)
            if (one.tried.used) {
              ++used;
              wrong += one.tried.result.verdict != given.verdict || one.tried.result.margin != given.margin ||
                       one.tried.band_nm != assessment.zones[z].subjects[s].band_nm;
            }
        };
        compare(zone.grids[s].limits);
        compare(zone.grids[s].losses);
      }
      wrong += !zone.grids.empty() && zone.verdict != gravest;
    }
  }
  CHECK(used > rounds * 3);
  CHECK(wrong == 0);
}

TEST_CASE("a thicker place stands no worse under any combination, and a stricter limit no better") {
  sample::Generator generator(8);
  const auto policy = house();
  int tried = 0, wrong = 0;
  for (int round = 0; round < rounds; ++round) {
    auto survey = generator.survey(1); // one gauge for plate: the lowest place keeps its doubt
    const auto before = robustness::robustness(survey, sample::assessed(survey, policy), policy);
    for (auto &mark : survey.marks)
      for (auto &repeat : mark.repeats) repeat.value = repeat.value + Length::nanometres(1 + generator.below(400'000));
    const auto after = robustness::robustness(survey, sample::assessed(survey, policy), policy);
    for (std::size_t z = 0; z < before.zones.size(); ++z) {
      const auto &was = before.zones[z], &now = after.zones[z];
      if (was.grids.empty() || was.over.limits != now.over.limits || was.over.losses != now.over.losses) continue;
      for (std::size_t i = 0; i < was.grids[0].limits.size(); ++i, ++tried)
        wrong += now.grids[0].limits[i].tried.result.verdict > was.grids[0].limits[i].tried.result.verdict;
      for (std::size_t i = 0; i < was.grids[0].losses.size(); ++i, ++tried)
        wrong += now.grids[0].losses[i].tried.result.verdict > was.grids[0].losses[i].tried.result.verdict;
      const std::size_t doubts = was.over.doubts.size();
      for (std::size_t i = doubts; i < was.grids[0].limits.size(); ++i)
        wrong += was.grids[0].limits[i].tried.result.verdict < was.grids[0].limits[i - doubts].tried.result.verdict;
    }
  }
  CHECK(tried > rounds * 20);
  CHECK(wrong == 0);
}
