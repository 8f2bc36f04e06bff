#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"
#include "strakebook/steel/assess/criteria.h"

using namespace strakebook;
using assess::Bare;
using assess::Fraction;
using assess::Length;
using assess::Verdict;
using sample::length;
using sample::result_of;

namespace {

/// Doubt of a gauge with the standard uncertainty `u`, or of none.
assess::Doubt doubt(const std::string &factor, const std::string &u = "0") {
  return {.u2 = assess::variance(length(u)), .factor = sample::decimal(factor)};
}

assess::CriterionResult plate(const std::string &nominal, const std::string &figure, const std::string &criterion) {
  auto survey = sample::SurveyBuilder().zone("W", nominal).row("PW", "W").marks("PW", {figure}).criteria({criterion});
  return result_of(sample::assessed(survey.made).zones[0].subjects[0], criterion);
}

} // namespace

// 30 % of 6.00 and of 10.00: common practice, no source; that a limit is strict, likewise.
TEST_CASE("a loss of exactly 30 % is at the limit, not over it") {
  CHECK(plate("6.000", "4.200", "percent-30").bare == Bare::at_limit);
  CHECK(plate("6.000", "4.199999", "percent-30").bare == Bare::over);
  CHECK(plate("6.000", "4.200001", "percent-30").bare == Bare::inside);
  CHECK(plate("10.00", "7.00", "percent-30").bare == Bare::at_limit);
}

TEST_CASE("without a band, at the limit meets and one nanometre less falls short: every size and share") {
  int wrong = 0;
  for (std::int64_t tenths = 30; tenths <= 600; ++tenths) {
    auto survey = sample::SurveyBuilder().zone("W", "6");
    survey.made.zones[0].original.nominal.value = Length::micrometres(tenths * 100);
    for (std::int64_t halves = 10; halves <= 80; ++halves) { // 5 to 40 % by 0.5
      const policy::Criterion criterion{.id = "p", .kind = policy::CriterionKind::percent, .most_loss = {halves, 200}};
      const auto limits = assess::limits_for(survey.made, survey.made.zones[0], sample::house(), {criterion}, {});
      const auto at = [&](std::int64_t off) {
        const auto limit = Length::nanometres(tenths * 100'000 * (200 - halves) / 200);
        return assess::against({.remaining = limit + Length::nanometres(off)}, limits).results[0];
      };
      const auto below = at(-1), on = at(0), above = at(1);
      wrong += below.bare != Bare::over || on.bare != Bare::at_limit || above.bare != Bare::inside;
      wrong += below.verdict != Verdict::falls_short || on.verdict != Verdict::meets || above.verdict != Verdict::meets;
      wrong += on.margin != Length{};
    }
  }
  CHECK(wrong == 0);
}

TEST_CASE("a limit that is no whole nanometre is printed rounded up and judged unrounded") {
  // 15 % of 1/64 in: 337343.75 nm may remain at the least.
  auto survey = sample::SurveyBuilder().zone("W", "1/64 in");
  const policy::Criterion criterion{.id = "p", .kind = policy::CriterionKind::percent, .most_loss = {15, 100}};
  const auto limits = assess::limits_for(survey.made, survey.made.zones[0], sample::house(), {criterion}, {});
  const auto at = [&](std::int64_t nm) {
    return assess::against({.remaining = Length::nanometres(nm)}, limits).results[0];
  };
  CHECK(at(337'344).limit == Length::nanometres(337'344));
  CHECK(at(337'344).bare == Bare::inside);
  CHECK(at(337'343).bare == Bare::over);
  CHECK(at(337'343).verdict == Verdict::falls_short);
}

TEST_CASE("the band is closed at its ends: w exactly is called, a nanometre inside is not") {
  // u 0.1, band 1.645: w = 0.1645 exactly
  const auto verdict = [&](std::int64_t nm) { return assess::judged(Fraction{nm, 1}, doubt("1.645", "0.1")); };
  CHECK(verdict(164'500) == Verdict::meets);
  CHECK(verdict(164'499) == Verdict::too_close);
  CHECK(verdict(0) == Verdict::too_close);
  CHECK(verdict(-164'499) == Verdict::too_close);
  CHECK(verdict(-164'500) == Verdict::falls_short);
  CHECK(assess::band(doubt("1.645", "0.1")) == length("0.1645"));
}

// JCGM 106:2012, guard band on a lower limit; computed: minimum 3.81, U = 0.20 (k = 2) accepts from 4.01, rejects below 3.61, and
// says nothing between. At 3.61 itself the house's rule speaks: only a margin smaller than the doubt is too close to call.
TEST_CASE("the decision rule of JCGM 106:2012 with k = 2") {
  const auto verdict = [](const char *figure) {
    const auto margin = length(figure) - length("3.81");
    return assess::judged(Fraction{margin.nm(), 1}, doubt("2", "0.1"));
  };
  CHECK(verdict("4.01") == Verdict::meets);
  CHECK(verdict("4.009999") == Verdict::too_close);
  CHECK(verdict("3.610001") == Verdict::too_close);
  CHECK(verdict("3.61") == Verdict::falls_short);
  CHECK(verdict("3.609999") == Verdict::falls_short);
}

TEST_CASE("under a pit the doubts of both gauges count") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5"}).pit("P1", "PW", "1.2", "5", "1");
  survey.made.gauges[0].u = length("0.3");
  survey.made.gauges[1].u = length("0.4");
  const auto subjects = sample::assessed(survey.made).zones[0].subjects;
  CHECK(subjects[0].band_nm == length("0.4935"));
  CHECK(subjects[1].band_nm == length("0.8225")); // 1.645 x 0.5
}

// Quarter-inch plate: 0.187 in and a pit of 60 thou leave 3.2258; the rule's bilge minimum for 18 m is 3.225.
TEST_CASE("inches are exact: 3.2258 against 3.225 is 0.0008 in hand, too close to call") {
  auto survey = sample::SurveyBuilder().zone("C", "1/4 in", "mill certificate", policy::Plating::bilge).row("PC", "C")
                    .marks("PC", {"0.187 in"}).pit("P1", "PC", "3", "0.187 in", "60 thou").criteria({"inland-rule"});
  const auto pit = sample::assessed(survey.made).zones[0].subjects[1];
  CHECK(pit.remaining == length("3.2258"));
  CHECK(result_of(pit, "inland-rule").margin == length("0.0008"));
  CHECK(result_of(pit, "inland-rule").bare == Bare::inside);
  CHECK(result_of(pit, "inland-rule").verdict == Verdict::too_close);
}

TEST_CASE("every place stands against its zone's limit with the doubt of its own gauge") {
  sample::SurveyBuilder builder;
  builder.zone("S", "6").row("PW", "S").marks("PW", {"4.9", "5.0"}).criteria({"absolute-4.0", "percent-20"});
  auto survey = builder.made;
  survey.gauges.push_back({.id = "poor", .u = sample::length("0.8")});
  survey.marks[1].gauge = "poor"; // w = 1.645 x 0.8 = 1.316: wider than the 1.0 in hand
  survey.decisions = {{.zone = "S", .action = "continue", .criterion = "absolute-4.0"}};
  auto result = sample::assessed(survey);
  CHECK(result.zones[0].measured_by == "absolute-4.0");
  CHECK(result.marks[0].standing->result.verdict == assess::Verdict::meets);
  CHECK(result.marks[1].standing->result.verdict == assess::Verdict::too_close);
  CHECK(result.marks[1].standing->band_nm == sample::length("1.316"));

  survey.decisions.clear(); // no criterion governs: the one with the least margin at the worst place
  CHECK(sample::assessed(survey).zones[0].measured_by == "percent-20");
  survey.criteria.clear(); // none at all: nothing stands as if it met something
  result = sample::assessed(survey);
  CHECK(result.zones[0].measured_by.empty());
  CHECK_FALSE(result.marks[0].standing);
}
