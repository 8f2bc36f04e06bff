#include <catch2/catch.hpp>

#include <map>

#include "strakebook/base/decimal.h"
#include "strakebook/house/house.h"
#include "strakebook/report.h"
#include "support/survey_builder.h"

// Cases of the trade, judged by the shipped layout. Limits, ladder and extent rule: common practice, no source. Band: JCGM
// 106:2012. Plate tolerances: EN 10029:1991 Table 1 (published summary sheets), EN 10051 (trade tables). Rule floor: Directive
// 2006/87/EC Annex II Art. 3.02.
using namespace strakebook;
using assess::Extent;
using assess::Nominal;
using assess::Verdict;
using base::Ratio;
using sample::length;
using Ids = std::vector<std::string>;

namespace {

const policy::Policy &shipped() {
  static const policy::Policy policy = [] {
    base::Diagnostics sink;
    auto house = house::read_house("base", installed_resources().layouts, STRAKEBOOK_TESTS, {}, sink);
    INFO(base::terminal_text(sink));
    REQUIRE(house);
    return house->policy;
  }();
  return policy;
}

assess::Assessment assessed(const sample::SurveyBuilder &survey) {
  base::Diagnostics sink;
  auto result = assess::assess(survey.made, shipped(), sink);
  REQUIRE(sink.ok());
  return result;
}

const assess::CriterionResult &against(const assess::Subject &subject, const std::string &criterion) {
  for (const auto &result : subject.results)
    if (result.criterion == criterion) return result;
  throw std::out_of_range(criterion);
}

const policy::Rung &rung(const assess::ZoneResult &zone) {
  for (const auto &one : shipped().ladder.rungs)
    if (one.id == zone.rung) return one;
  throw std::out_of_range(zone.rung);
}

/// In percent, rounded to so many places.
std::string in_percent(Ratio share, int places) { return base::to_text(base::round_to({share.num * 100, share.den}, places)); }

const Ids usual_criteria = {"absolute-4.0", "absolute-3.0", "inland-rule", "percent-20", "percent-25", "percent-30"};

/// A bottom of 12 mm by the builder's invoice, five marks at 11.4, four old pits in 20 m2.
sample::SurveyBuilder thick_bottom() {
  auto survey = sample::SurveyBuilder().zone("B", "12", "builder's invoice", policy::Plating::bottom).pitting("4", "20", "0.01");
  survey.row("BC", "B").marks("BC", {"11.4", "11.4", "11.4", "11.4", "11.4"});
  for (const char *at : {"8.4", "9.6", "10.3", "11.2"}) survey.pit(std::string("P") + at, "BC", at, "11.4", "3.5");
  return survey.criteria(usual_criteria);
}

/// Sides on the owner's word of 6: three sheltered marks, one low mark, 34 between; 38 in all.
sample::SurveyBuilder unknown_side(const Ids &tolerances) {
  auto survey = sample::SurveyBuilder().zone("L", "6", "owner's word").row("PL", "L").marks("PL", {"6.0", "6.1", "6.1", "4.6"});
  survey.marks("PL", std::vector<std::string>(34, "5.3")).criteria(usual_criteria).decide("L", "monitor", "absolute-4.0");
  auto &original = survey.made.zones[0].original;
  original.source = sample::words("told, owner");
  original.tolerances = tolerances;
  original.assumption = sample::words("sheltered plate is unwasted");
  return survey;
}

using States = std::map<int, Nominal::State>;
States states(const assess::ZoneResult &zone) {
  States out;
  for (const auto &one : zone.nominals) out[static_cast<int>(one.nominal.nm() / 1'000'000)] = one.state;
  return out;
}

/// Sizes that fit under one tolerance, in mm.
std::vector<int> fitting(const assess::ZoneResult &zone, const std::string &tolerance) {
  std::vector<int> out;
  for (const auto &one : zone.nominals)
    for (const auto &fit : one.fits)
      if (fit.tolerance == tolerance && fit.state == Nominal::State::alive) out.push_back(static_cast<int>(one.nominal.nm() / 1'000'000));
  return out;
}

} // namespace

TEST_CASE("thick bottom: 7.9 is left under the pit, 34.2 per cent gone, and percent and absolute contradict each other") {
  const auto result = assessed(thick_bottom());
  const auto &zone = result.zones.at(0);
  const auto &pit = zone.subjects.at(1);
  CHECK(pit.remaining == length("7.9")); // adjacent less depth, not 12 less depth, which were 8.5
  CHECK(in_percent(zone.general->share->nominal, 1) == "5.0");
  CHECK(in_percent(zone.under_pit->share->nominal, 1) == "34.2");
  CHECK(in_percent({35, 120}, 1) == "29.2"); // the mistake, on the other side of 30
  CHECK(result.pits.at(0).loss == length("4.1"));
  for (const char *percent : {"percent-20", "percent-25", "percent-30"})
    CHECK(against(pit, percent).verdict == Verdict::falls_short);
  CHECK(against(pit, "absolute-4.0").verdict == Verdict::meets);
  CHECK(against(pit, "absolute-4.0").margin == length("3.9"));
  CHECK(against(pit, "absolute-3.0").verdict == Verdict::meets);
  CHECK(against(pit, "absolute-3.0").margin == length("4.9"));
  CHECK(against(pit, "inland-rule").limit == length("3.0"));
  CHECK(zone.conflict);
}

TEST_CASE("thick bottom: four pits in 20 m2 are isolated, and the row asks for coating, never for plate") {
  const auto zone = assessed(thick_bottom()).zones.at(0);
  CHECK(zone.extent == Extent::isolated);
  CHECK(*zone.pitting.per_m2 == Ratio{1, 5});
  CHECK(*zone.pitting.spacing == length("700")); // 9.6 to 10.3
  CHECK(*zone.pitting.factor == Ratio{41, 6});   // 4.1 over a mean loss of 0.6
  CHECK(zone.suggested == Ids{"clean and recoat", "monitor"});
  CHECK(rung(zone).isolated_words.find("24 months") != std::string::npos);
  CHECK(rung(zone).classes == Ids{"B"});
}

TEST_CASE("light plate: a pit of 1.3 beside 4.6 of 5") {
  auto survey = sample::SurveyBuilder().zone("W", "5", "drawing").pitting("1", "10", "0.1").row("PW", "W")
                    .marks("PW", {"4.6", "4.6", "4.6", "4.6", "4.6"}).pit("P1", "PW", "2.4", "4.6", "1.3").criteria(usual_criteria);
  const auto zone = assessed(survey).zones.at(0);
  const auto &pit = zone.subjects.at(1);
  CHECK(pit.remaining == length("3.3"));
  CHECK(in_percent(zone.under_pit->share->nominal, 2) == "34.00");
  CHECK(in_percent(zone.general->share->nominal, 2) == "8.00");
  CHECK(base::mm_text(pit.band_nm, 2) == "0.23"); // 1.645 sqrt(0.1^2 + 0.1^2)
  CHECK(against(pit, "percent-25").limit == length("3.75"));
  CHECK(against(pit, "percent-25").verdict == Verdict::falls_short);
  CHECK(against(pit, "absolute-4.0").verdict == Verdict::falls_short);
  CHECK(against(pit, "percent-30").limit == length("3.5"));
  CHECK(against(pit, "percent-30").verdict == Verdict::too_close);
  CHECK(against(pit, "absolute-3.0").verdict == Verdict::meets);
  CHECK(against(pit, "absolute-3.0").margin == length("0.3"));
  CHECK(zone.extent == Extent::isolated);
  CHECK(zone.suggested == Ids{"weld build-up", "pad weld"});
}

TEST_CASE("original unknown: 5 and 6 fit 6.1 under EN 10029:1991 A, only 6 under EN 10051") {
  const auto zone = assessed(unknown_side({"EN 10029:1991 A", "EN 10051"})).zones.at(0);
  CHECK(zone.count.used == 38);
  CHECK(zone.max == length("6.1"));
  CHECK(fitting(zone, "EN 10029:1991 A") == std::vector<int>{5, 6});
  CHECK(fitting(zone, "EN 10051") == std::vector<int>{6});
  using State = Nominal::State;
  CHECK(states(zone) == States{{4, State::excluded}, {5, State::alive}, {6, State::alive}, {8, State::set_aside},
                               {10, State::set_aside}, {12, State::set_aside}});
  CHECK(in_percent(*zone.alive_low, 1) == "8.0");
  CHECK(in_percent(*zone.alive_high, 1) == "23.3");
  CHECK(zone.highest_original == length("6"));
  CHECK(zone.told);
}

TEST_CASE("original unknown: absolute governs with 0.6 in hand, no percent is judged, and the row is monitored") {
  const auto result = assessed(unknown_side({"EN 10029:1991 A", "EN 10051"}));
  const auto &zone = result.zones.at(0);
  CHECK(zone.weak_basis);
  CHECK(against(zone.subjects.at(0), "absolute-4.0").governs);
  CHECK(against(zone.subjects.at(0), "absolute-4.0").margin == length("0.6"));
  CHECK(against(zone.subjects.at(0), "percent-20").why_not == "weak-basis");
  CHECK_FALSE(zone.conflict);
  CHECK(result.worst_loss.empty());
  CHECK_FALSE(zone.departs); // monitor is one of the row's
  CHECK(rung(zone).isolated_words.find("24 months") != std::string::npos);
}

TEST_CASE("original unknown: 8 mm is set aside by the stated assumption and by nothing else") {
  auto survey = unknown_side({"EN 10029:1991 A", "EN 10051"});
  survey.made.zones[0].original.assumption = {};
  const auto zone = assessed(survey).zones.at(0);
  CHECK(states(zone)[8] == Nominal::State::alive);
  CHECK(states(zone)[4] == Nominal::State::excluded);
  CHECK(zone.highest_original == length("12"));
}

TEST_CASE("original unknown: where no tolerance is named the house's usual ones are considered") {
  const auto zone = assessed(unknown_side({})).zones.at(0);
  CHECK(zone.tolerances == Ids{"EN 10029:1991 A", "EN 10051"});
  CHECK(states(zone) == states(assessed(unknown_side({"EN 10029:1991 A", "EN 10051"})).zones.at(0)));
}

TEST_CASE("original unknown: under EN 10051 alone only 6 fits; sizes it has no figure for are held against the usual ones") {
  const auto zone = assessed(unknown_side({"EN 10051"})).zones.at(0);
  for (const auto &[size, state] : states(zone)) {
    INFO(size);
    CHECK((state == Nominal::State::alive) == (size == 6));
  }
}

// One reading, one nominal: at nominal, and as far as the standard's classes reach when it is not known which.
TEST_CASE("4.50 of nominal 6: 25.0 per cent; begun at 5.25, 14.286; begun at 7.20, 37.5") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.50"});
  survey.made.zones[0].original.tolerances = {"EN 10029:1991 A", "EN 10029:1991 B", "EN 10029:1991 D"};
  const auto share = *assessed(survey).marks.at(0).share;
  CHECK(in_percent(share.nominal, 1) == "25.0");
  CHECK(in_percent(*share.low, 3) == "14.286");
  CHECK(in_percent(*share.high, 1) == "37.5");
}
