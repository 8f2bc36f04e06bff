#include <catch2/catch.hpp>

#include "steel/assess/assessed.h"

// Cases of the trade; limits and ladder are common practice, no source.
using namespace strakebook;
using assess::Bare;
using assess::Extent;
using assess::Verdict;
using base::Ratio;
using sample::length;
using sample::result_of;
using Ids = std::vector<std::string>;

TEST_CASE("a thick bottom with deep pits") {
  const auto result = sample::assessed(sample::thick_bottom().made);
  const auto &zone = result.zones.at(0);
  REQUIRE(zone.subjects.size() == 2);
  const auto &pit = zone.subjects[1];

  CHECK(pit.id == "P2");
  CHECK(pit.remaining == length("7.9")); // adjacent less depth, not 12 less depth
  CHECK(zone.under_pit->share->nominal == Ratio{41, 120});
  CHECK(zone.local->share->nominal == Ratio{6, 120});
  for (const char *percent : {"percent-20", "percent-25", "percent-30"})
    CHECK(result_of(pit, percent).verdict == Verdict::falls_short);
  CHECK(result_of(pit, "absolute-4.0").verdict == Verdict::meets);
  CHECK(result_of(pit, "absolute-4.0").margin == length("3.9"));
  CHECK(result_of(pit, "absolute-3.0").margin == length("4.9"));
  CHECK(zone.conflict);
  CHECK(zone.conflict_at == "P2");
  CHECK(zone.short_of == Ids{"percent-20", "percent-25", "percent-30"});
  CHECK(zone.met == Ids{"absolute-4.0", "absolute-3.0"});
  CHECK(zone.extent == Extent::isolated);
  CHECK(zone.rung == "reduced");
  CHECK(zone.suggested == Ids{"clean and recoat", "monitor"});
  CHECK(result.worst == "P2");
  CHECK(result.worst_loss == "P2");
}

TEST_CASE("a light side with one pit") {
  auto survey = sample::SurveyBuilder().zone("W", "5").row("PW", "W").marks("PW", {"4.6", "4.6", "4.6"})
                    .pit("P1", "PW", "2.4", "4.6", "1.3").criteria({"percent-25", "percent-30", "absolute-4.0", "absolute-3.0"});
  const auto result = sample::assessed(survey.made);
  const auto &pit = result.zones.at(0).subjects.at(1);
  CHECK(pit.remaining == length("3.3"));
  CHECK(result.zones[0].under_pit->share->nominal == Ratio{34, 100});
  // 1.645 x 0.1 x sqrt(2) = 0.232638...
  CHECK(pit.band_nm == policy::Length::nanometres(232'639));
  CHECK(result_of(pit, "percent-25").verdict == Verdict::falls_short);
  CHECK(result_of(pit, "percent-30").verdict == Verdict::too_close);
  CHECK(result_of(pit, "percent-30").limit == length("3.5"));
  CHECK(result_of(pit, "absolute-4.0").verdict == Verdict::falls_short);
  CHECK(result_of(pit, "absolute-3.0").verdict == Verdict::meets);
  CHECK(result_of(pit, "absolute-3.0").margin == length("0.3"));
}

TEST_CASE("the original is not known") {
  auto survey = sample::SurveyBuilder().zone("W", "6", "owner's word").row("PW", "W")
                    .marks("PW", {"6.0", "6.1", "6.1", "4.6"}).criteria({"percent-20", "absolute-4.0"});
  auto &original = survey.made.zones[0].original;
  using State = assess::Nominal::State;
  const auto states = [&] {
    std::map<std::int64_t, State> found;
    const auto result = sample::assessed(survey.made);
    for (const auto &nominal : result.zones[0].nominals) found[nominal.nominal.nm() / 1'000'000] = nominal.state;
    return found;
  };

  SECTION("EN 10029:1991 A: 5 and 6 fit the 6.1") {
    original.tolerances = {"EN 10029:1991 A"};
    original.assumption = sample::words("sheltered plate is unwasted");
    CHECK(states() == std::map<std::int64_t, State>{{4, State::excluded}, {5, State::alive}, {6, State::alive},
                                                    {8, State::set_aside}, {10, State::set_aside}, {12, State::set_aside}});
    const auto result = sample::assessed(survey.made);
    const auto &zone = result.zones[0];
    CHECK(*zone.alive_low == Ratio{8, 100});
    CHECK(*zone.alive_high == Ratio{14, 60});
    CHECK(zone.highest_original == length("6"));
    CHECK(zone.weak_basis);
    CHECK_FALSE(zone.local->share);
    CHECK_FALSE(result.marks[0].share);
    CHECK(result.worst_loss.empty());
    CHECK(result_of(zone.subjects[0], "percent-20").verdict == Verdict::not_applicable);
    CHECK(result_of(zone.subjects[0], "percent-20").why_not == "weak-basis");
    CHECK(result_of(zone.subjects[0], "absolute-4.0").margin == length("0.6"));
    CHECK_FALSE(zone.conflict);
  }
  SECTION("without the assumption nothing thicker is set aside") {
    original.tolerances = {"EN 10029:1991 A"};
    CHECK(states()[8] == State::alive);
    CHECK(sample::assessed(survey.made).zones[0].highest_original == length("12"));
  }
  SECTION("one nanometre more than 5 plus its tolerance excludes 5") {
    original.tolerances = {"EN 10029:1991 A"};
    survey.mark("PW", "9", "6.100001");
    CHECK(states()[5] == State::excluded);
  }
  SECTION("EN 10051: only 6") {
    original.tolerances = {"EN 10051"};
    original.assumption = sample::words("sheltered plate is unwasted");
    CHECK(states()[5] == State::excluded);
    CHECK(states()[6] == State::alive);
    CHECK(states()[8] == State::set_aside);
  }
  SECTION("a stated size that is not a usual one is considered too") {
    original.nominal = sample::mm("1/4 in");
    original.tolerances = {"EN 10029:1991 A"};
    const auto nominals = sample::assessed(survey.made).zones[0].nominals;
    CHECK(nominals.size() == 7);
    CHECK(nominals[3].nominal == length("6.35"));
  }
}

TEST_CASE("criteria that contradict each other on a side of 6 mm, extensive at 4.6") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5.8", "4.6", "4.7", "4.6"})
                    .zone("C", "6", "mill certificate", policy::Plating::bilge).row("PC", "C").marks("PC", {"4.9", "4.9", "5.0"})
                    .criteria({"percent-20", "percent-25", "margin-20", "margin-25", "absolute-4.0", "absolute-3.0", "inland-rule"})
                    .decide("W", "monitor", "absolute-4.0");
  const auto result = sample::assessed(survey.made);
  const auto &side = result.zones.at(0), &chine = result.zones.at(1);
  const auto &low = side.subjects.at(0);
  CHECK(low.id == "PW 2"); // the first of equals
  CHECK(side.local->share->nominal == Ratio{14, 60});
  CHECK(base::to_text(base::round_to({14 * 100, 60}, 1)) == "23.3");
  CHECK(result.marks[1].loss == length("1.4"));
  CHECK(result_of(low, "percent-20").limit == length("4.80"));
  CHECK(result_of(low, "percent-20").verdict == Verdict::falls_short);
  CHECK(result_of(low, "percent-20").margin == -length("0.20"));
  CHECK(result_of(low, "percent-25").limit == length("4.50"));
  CHECK(result_of(low, "percent-25").verdict == Verdict::too_close);
  CHECK(result_of(low, "percent-25").margin == length("0.10"));
  CHECK(result_of(low, "percent-25").bare == Bare::inside);
  CHECK(result_of(low, "absolute-4.0").verdict == Verdict::meets);
  CHECK(result_of(low, "absolute-4.0").margin == length("0.60"));
  CHECK(result_of(low, "absolute-4.0").governs);
  CHECK_FALSE(result_of(low, "percent-20").governs);
  CHECK(result_of(low, "absolute-3.0").verdict == Verdict::meets);
  CHECK(result_of(low, "inland-rule").limit == length("3.0"));
  CHECK(result_of(low, "inland-rule").verdict == Verdict::meets);
  CHECK(result_of(chine.subjects.at(0), "inland-rule").limit == length("3.225"));
  CHECK(result_of(chine.subjects.at(0), "inland-rule").verdict == Verdict::meets);
  CHECK(result.workings.at("inland-rule/bilge").b == Ratio{5, 4});

  // IACS UR Z10.1: 1.4 lost is beyond 1.125 and within 1.5 of 25 %; of 20 % it is beyond the 1.2 that may go.
  CHECK(result_of(low, "margin-25").substantial);
  CHECK(result_of(low, "margin-25").substantial_below == length("6") - length("1.125"));
  CHECK(result_of(low, "margin-25").limit == length("6") - length("1.5"));
  CHECK_FALSE(result_of(low, "margin-20").substantial);
  CHECK(result_of(low, "margin-20").limit == length("6") - length("1.2"));
  CHECK(result_of(low, "margin-20").bare == Bare::over);

  CHECK(side.conflict);
  CHECK(side.short_of == Ids{"percent-20", "margin-20"});
  CHECK(side.suggests_extensive);
  CHECK(side.suggested == Ids{"monitor"});
  CHECK_FALSE(side.departs);
  CHECK_FALSE(chine.conflict);
}

TEST_CASE("the loss range runs over the delivery tolerance") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"4.5"});
  survey.made.zones[0].original.tolerances = {"EN 10029:1991 A"};
  const auto share = *sample::assessed(survey.made).marks[0].share;
  CHECK(share.nominal == Ratio{1, 4});
  CHECK(*share.low == Ratio{11, 56});  // began at 5.60
  CHECK(*share.high == Ratio{26, 71}); // began at 7.10
}

TEST_CASE("a formula without its figures is an error at its use, and does not pass") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5"}).criteria({"inland-rule"});
  survey.made.vessel.draught.reset();
  base::Diagnostics sink;
  const auto result = assess::assess(survey.made, sample::house(), sink);
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].code == base::Code::criterion_inputs);
  CHECK(result_of(result.zones[0].subjects[0], "inland-rule").why_not == "inputs");
}

TEST_CASE("a criterion for other plating does not apply, and its formula is not asked for") {
  auto survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").marks("PW", {"5"}).criteria({"inland-rule"});
  survey.made.vessel.draught.reset();
  auto policy = sample::house();
  policy.criteria["inland-rule"].plating = {policy::Plating::bottom};
  const auto result = sample::assessed(survey.made, policy);
  CHECK(result_of(result.zones[0].subjects[0], "inland-rule").why_not == "scope");
  CHECK(result.workings.empty());
}
