#include <catch2/catch.hpp>

#include "steel/review/final_sample.h"

using namespace strakebook;
using base::Code;
using sample::decimal;
using sample::length;
using sample::mm;
using sample::only;
using sample::says;
using sample::station;
using sample::words;

namespace {

/// A final that lacks nothing, its house with metals, and works by hand.
struct Boat {
  survey::Survey survey = sample::complete_final();
  policy::Policy policy = sample::house();
  works::Works works;
  std::vector<std::optional<double>> weights; ///< of the plates in the schedule, as the test would have them

  Boat() {
    policy.protection.metals["zinc"] = {.capacity = decimal("780"), .waters = {"salt"}};
    policy.protection.unworn_percent = decimal("5");
    policy.protection.unworn_months = 12;
  }
  /// 18 x 2.08 x 0.9 = 33.696 m2: 33.696 kg sink her by a millimetre.
  Boat &put(std::optional<double> kg) {
    survey.steelwork.push_back(sample::sound_plate("overplate"));
    survey.steelwork.back().id = "S" + std::to_string(survey.steelwork.size());
    survey.steelwork.back().at = {.rows = {"BC"}, .from = station("2"), .to = station("3"), .span = sample::at_line(60)};
    survey.steelwork.back().span = sample::at_line(60);
    weights.push_back(kg);
    base::Diagnostics sink;
    works = works::reckon(survey, assess::assess(survey, policy, sink), policy);
    for (std::size_t i = 0; i < weights.size(); ++i) works.items[i].net_kg = weights[i];
    return *this;
  }
  std::vector<base::Diagnostic> reviewed() const {
    base::Diagnostics sink;
    const auto assessment = assess::assess(survey, policy, sink);
    outlook::Outlook outlook;
    outlook.works = works;
    outlook.afloat = afloat::float_with(survey, assessment, policy, works);
    outlook.protection = protection::reckon(survey, assessment, policy);
    review::review(survey, assessment, outlook, policy, sink);
    return sink.all();
  }
  /// What is to be acknowledged, without the errors that nobody has yet.
  std::vector<base::Diagnostic> warnings() const {
    auto found = reviewed();
    std::erase_if(found, [](const base::Diagnostic &one) { return one.subject.empty(); });
    return found;
  }
};

} // namespace

TEST_CASE("steel that leaves less than the house asks after is to be acknowledged") {
  Boat boat;
  CHECK(boat.put(33.696 * 50).reviewed().empty()); // 250 mm of opening left: not less
  boat.put(3.3696);
  const auto found = only(boat.warnings(), Code::little_freeboard);
  CHECK(says(found, "the lowest opening is 249.9 mm above the water with the steel of the schedule"));
  CHECK(found.subject == "downflooding");
  CHECK(found.span.line == 70);
  CHECK(boat.reviewed().size() == 2); // and a final is refused until somebody answers
  boat.survey.acknowledgements = {{.subject = "downflooding", .reason = words("the hatch is sealed in the next item")}};
  CHECK(boat.warnings().size() == 1);
  CHECK(boat.reviewed().size() == 1);
}

TEST_CASE("little freeboard as found is to be acknowledged too") {
  Boat boat;
  boat.survey.afloat.freeboard->length = station("0.24 m");
  CHECK(says(only(boat.warnings(), Code::little_freeboard), "the least freeboard is 240 mm above the water as found"));
}

TEST_CASE("steel without the figures of floating is told what to give") {
  Boat boat;
  boat.survey.afloat = {};
  CHECK(boat.reviewed().empty()); // nothing is added
  boat.put(500).put(std::nullopt);
  const auto found = only(boat.warnings(), Code::afloat_inputs);
  CHECK(says(found, "afloat: water, afloat: waterplane-coefficient, afloat: freeboard, afloat: downflooding and S2: a mark read where "
                    "it is let in are not given"));
  CHECK(found.span.line == 60);
}

TEST_CASE("a metal that does not suit the water") {
  Boat boat;
  boat.survey.coating.plan = survey::AnodePlan{.metal = words("zinc"), .span = sample::at_line(80)};
  const auto found = only(boat.warnings(), Code::anode_metal);
  CHECK(says(found, "the anodes planned are of zinc, and she floats in fresh water"));
  CHECK(found.subject == "anode-metal planned");
  CHECK(found.span.line == 80);
  boat.survey.coating.fitted = survey::AnodesFitted{.metal = words("zinc")};
  CHECK(boat.warnings().size() == 2);
}

TEST_CASE("anodes that make her too wide for her lock") {
  Boat boat;
  boat.survey.vessel.narrowest = survey::LengthFact{.length = station("2.13 m")};
  boat.survey.coating.plan = survey::AnodePlan{.stands_out = mm("24 mm")};
  CHECK(boat.warnings().empty());
  boat.survey.coating.plan->stands_out = mm("60 mm");
  CHECK(says(only(boat.warnings(), Code::too_wide), "the beam over all would be 2200 mm in a lock of 2130 mm"));
}

TEST_CASE("anodes that have not worn want an answer") {
  Boat boat;
  boat.survey.coating.fitted =
      survey::AnodesFitted{.on = base::Located<base::Date>{{2025, 1, 1}, {}}, .worn_percent = decimal("2")};
  CHECK(says(only(boat.warnings(), Code::anodes_unworn), "fitted on 2025-01-01 and have lost 2 % by 2026-10-14"));
  boat.survey.coating.fitted->answer = words("They were painted over, and the paint is to come off.");
  CHECK(boat.warnings().empty());
}
