#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "steel/assess/generated.h"
#include "strakebook/steel/works/runs.h"

using namespace strakebook;
using assess::Verdict;
using works::Area;

namespace {

/// The verdict of the planned mark of a row that is nearest to a place and shows something, reckoned afresh; nullopt: none does.
std::optional<Verdict> nearest_shown(const survey::Survey &survey, const assess::Assessment &assessment, const std::string &row, std::int64_t at_nm) {
  std::optional<Verdict> verdict;
  std::int64_t off = 0;
  for (std::size_t i = 0; i < survey.marks.size(); ++i) {
    const auto &standing = assessment.marks[i].standing;
    if (survey.marks[i].row != row || !standing) continue;
    const std::int64_t own = std::abs(survey.marks[i].station.value.nm() - at_nm);
    if (verdict && own >= off) continue;
    verdict = standing->result.verdict;
    off = own;
  }
  return verdict;
}

} // namespace

TEST_CASE("runs: without pits, a place lies in one exactly where the nearest mark that shows something does not meet") {
  sample::Generator generator(20261128);
  constexpr std::int64_t step = 130'000'001; // never half-way between marks a metre apart
  int inside = 0;
  for (int n = 0; n < 200; ++n) {
    auto survey = generator.survey(1);
    survey.pits.clear();
    const auto assessment = sample::assessed(survey);
    for (std::size_t row = 0; row < survey.rows.size(); ++row) {
      const auto runs = works::runs_of(survey, assessment, row);
      std::int64_t last = 0;
      for (const auto &mark : survey.marks)
        if (mark.row == survey.rows[row].id) last = std::max(last, mark.station.value.nm());
      for (std::int64_t at = 1'000'000'000; at <= last; at += step) {
        const auto shown = nearest_shown(survey, assessment, survey.rows[row].id, at);
        for (const auto kind : {Area::Kind::falls_short, Area::Kind::too_close}) {
          const bool within = std::ranges::any_of(runs, [&](const works::Run &run) {
            return run.kind == kind && run.along.from.nm() <= at && at <= run.along.to.nm();
          });
          const bool expected = shown == (kind == Area::Kind::falls_short ? Verdict::falls_short : Verdict::too_close);
          if (within != expected) FAIL("row " << survey.rows[row].id << " of survey " << n << " at " << at);
          inside += within;
        }
      }
    }
  }
  CHECK(inside > 1000);
}

TEST_CASE("runs: every place that does not meet is in exactly one") {
  sample::Generator generator(7);
  int seen = 0;
  for (int n = 0; n < 200; ++n) {
    const auto survey = generator.survey(2);
    const auto assessment = sample::assessed(survey);
    std::map<std::string, int> in_runs;
    for (std::size_t row = 0; row < survey.rows.size(); ++row)
      for (const auto &run : works::runs_of(survey, assessment, row))
        for (const auto &place : run.places) ++in_runs[place.id];
    const auto check = [&](const std::string &id, const std::optional<assess::Standing> &standing) {
      const bool failing = standing && standing->result.verdict != Verdict::meets && standing->result.verdict != Verdict::not_applicable;
      if (in_runs[id] > 1 || (in_runs[id] == 1 && !failing)) FAIL(id << " of survey " << n);
      // a place too close at a station where another falls short is listed with that one
      if (failing && in_runs[id] == 0) FAIL(id << " of survey " << n << " is in no run");
      seen += failing;
    };
    for (const auto &mark : assessment.marks) check(survey.marks[mark.mark].id(), mark.standing);
    for (const auto &pit : assessment.pits) check(survey.pits[pit.pit].id, pit.standing);
  }
  CHECK(seen > 500);
}
