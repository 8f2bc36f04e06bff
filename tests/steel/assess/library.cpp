#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"

using namespace strakebook;
using assess::Bare;
using assess::Verdict;
using sample::length;
using sample::result_of;

namespace {

policy::Policy with(policy::Criterion criterion) {
  auto policy = sample::house();
  policy.criteria_order.push_back(criterion.id);
  policy.criteria[criterion.id] = std::move(criterion);
  return policy;
}

sample::SurveyBuilder side(const std::string &nominal, const std::string &figure, const std::string &criterion,
                           const std::string &basis = "mill certificate") {
  return sample::SurveyBuilder().zone("W", nominal, basis).row("PW", "W").marks("PW", {figure}).criteria({criterion});
}

assess::CriterionResult result(const survey::Survey &survey, const policy::Policy &policy = sample::house()) {
  return sample::assessed(survey, policy).zones[0].subjects[0].results[0];
}

assess::CriterionResult allowed(const std::string &share, const std::string &figure) {
  return result(side("6.00", figure, "margin-" + share).made);
}

policy::Criterion thin_plate() {
  auto criterion = sample::most_loss("25");
  criterion.original_at_most = length("4");
  return criterion;
}

policy::Criterion declared(policy::Criterion criterion, policy::Declaration declaration) {
  criterion.declared = declaration;
  return criterion;
}

policy::Criterion passenger_minimum() {
  return declared({.id = "passenger-rule", .kind = policy::CriterionKind::passenger_minimum, .passenger = sample::passenger_rule()},
                  policy::Declaration::passengers);
}

} // namespace

// IACS UR Z10.1, ESP Code 1.2.9: in excess of 75 % of the allowable margin, within it. Computed for 6.00 mm.
TEST_CASE("substantial corrosion is a loss beyond three quarters of the allowable, and not beyond it") {
  CHECK(allowed("20", "5.0").limit == length("4.80"));
  CHECK(allowed("20", "5.0").substantial_below == length("5.10"));
  CHECK_FALSE(allowed("20", "5.10").substantial); // 0.90 exactly is not in excess of it
  CHECK(allowed("20", "5.099999").substantial);
  CHECK(allowed("20", "4.80").substantial); // at the limit is not over it
  CHECK(allowed("20", "4.80").bare == Bare::at_limit);
  CHECK_FALSE(allowed("20", "4.799999").substantial); // past it
  CHECK(allowed("20", "4.799999").bare == Bare::over);
  CHECK(allowed("25", "5.0").limit == length("4.50"));
  CHECK(allowed("25", "5.0").substantial_below == length("4.875"));
  CHECK_FALSE(allowed("25", "4.875").substantial);
  CHECK(allowed("25", "4.874999").substantial);
}

TEST_CASE("an allowable margin sets the same limit as its percentage and is not applied on a weak basis") {
  CHECK(allowed("25", "4.6").limit == result(side("6.00", "4.6", "percent-25").made).limit);
  CHECK_FALSE(result(side("6.00", "4.6", "percent-25").made).substantial_below);
  CHECK(result(side("6.00", "4.6", "margin-25", "owner's word").made).why_not == "weak-basis");
}

// Common practice, no source: 25 % at the most where plate is 4 mm or thinner.
TEST_CASE("the thin-plate criterion applies up to its bound, the bound included") {
  const auto policy = with(thin_plate());
  CHECK(result(side("4.0", "3.5", "percent-25").made, policy).limit == length("3.0"));
  CHECK(result(side("3.0", "2.5", "percent-25").made, policy).limit == length("2.25"));
  CHECK(result(side("4.000001", "3.5", "percent-25").made, policy).why_not == "thicker");
  CHECK(result(side("4.0", "3.5", "percent-25", "owner's word").made, policy).why_not == "weak-basis");
}

// USCG NVIC 7-68: 15 % for light hulls.
TEST_CASE("the light-scantlings criterion waits for the declaration") {
  const auto policy = with(declared(sample::most_loss("15"), policy::Declaration::light_scantlings));
  auto survey = side("6.00", "5.0", "percent-15").made;
  CHECK(result(survey, policy).why_not == "not-declared");
  survey.vessel.light_scantlings = base::Located<bool>{false};
  CHECK(result(survey, policy).why_not == "not-declared");
  survey.vessel.light_scantlings = base::Located<bool>{true};
  CHECK(result(survey, policy).limit == length("5.1"));
  CHECK(result(survey, policy).verdict == Verdict::too_close);
}

// Directive 2006/87/EC Annex II Art. 15.02: 30 m, 400 mm, 1.2 m gives 3.0, raw 2.62907.
TEST_CASE("the passenger minimum waits for the declaration and then asks for its figures") {
  const auto policy = with(passenger_minimum());
  auto survey = side("6.00", "3.5", "passenger-rule").made;
  survey.vessel.draught.reset();
  CHECK(result(survey, policy).why_not == "not-declared"); // and nothing is asked for
  survey.vessel.carries = sample::words("cargo");
  CHECK(result(survey, policy).why_not == "not-declared");
  survey.vessel.carries = sample::words("passengers");
  base::Diagnostics sink;
  CHECK(assess::assess(survey, policy, sink).zones[0].subjects[0].results[0].why_not == "inputs");
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].code == base::Code::criterion_inputs);

  survey.vessel.length.length = sample::station("30 m");
  survey.vessel.draught = survey::LengthFact{.length = sample::station("1.2 m")};
  survey.vessel.frame_spacing = survey::LengthFact{.length = sample::station("0.4 m")};
  CHECK(result(survey, policy).limit == length("3.0"));
  CHECK(base::mm_text(sample::assessed(survey, policy).workings.at("passenger-rule/side").by_draught, 5) == "2.62907");
}

TEST_CASE("the length of the waterline is taken where it is given, else the length") {
  const auto policy = with(passenger_minimum());
  auto survey = side("6.00", "3.5", "passenger-rule").made;
  survey.vessel.carries = sample::words("passengers");
  survey.vessel.length.length = sample::station("81 m");
  const auto by_length = [&] { return sample::assessed(survey, policy).workings.at("passenger-rule/side").by_length; };
  CHECK(by_length() == length("4.95")); // 0.55 x 9, f 1
  survey.vessel.waterline_length = survey::LengthFact{.length = sample::station("64 m")};
  CHECK(by_length() == length("4.4")); // 0.55 x 8
}

TEST_CASE("every zone says of every criterion whether it applies, and why not, even where nothing was read") {
  auto policy = with(declared(sample::most_loss("15"), policy::Declaration::light_scantlings));
  policy.criteria["percent-25"] = thin_plate();
  policy.criteria["absolute-3.0"].plating = {policy::Plating::bottom};
  auto builder = side("6.00", "5.0", "absolute-4.0").zone("M", "6", "owner's word").row("PM", "M");
  const auto survey = builder.unread("PM", survey::Status::no_echo)
                          .criteria({"absolute-3.0", "percent-15", "percent-20", "percent-25"}).made;
  const auto assessed = sample::assessed(survey, policy);
  const auto why = [&](std::size_t zone) {
    std::map<std::string, std::string> found;
    for (const auto &one : assessed.zones[zone].criteria) {
      CHECK(one.limit.has_value() == one.why_not.empty());
      found[one.criterion] = one.why_not;
    }
    return found;
  };
  using Found = std::map<std::string, std::string>;
  CHECK(why(0) == Found{{"absolute-4.0", ""}, {"absolute-3.0", "scope"}, {"percent-15", "not-declared"}, {"percent-20", ""},
                        {"percent-25", "thicker"}});
  CHECK(why(1)["percent-20"] == "weak-basis");
  CHECK(assessed.zones[1].subjects.empty());
  const nlohmann::json json = assess::json(survey, assessed);
  CHECK(json["zones"][0]["criteria"][0] == nlohmann::json{{"criterion", "absolute-4.0"}, {"applies", true}, {"limit", "4.0"}});
  CHECK(json["zones"][1]["criteria"][1]["why_not"] == "scope");
}

// Common practice, no source: where limits on a share and on what is left cross. 20 % and 4.0 at 5.00 mm, 25 % and 4.0 at 5.33...,
// 25 % and 3.0 at 4.00. Worked by hand.
TEST_CASE("shares and remainders cross where arithmetic says") {
  const auto limit = [](const char *nominal, const char *criterion) { return result(side(nominal, "4", criterion).made).limit; };
  CHECK(limit("5.00", "percent-20") == length("4.0"));
  CHECK(limit("5.01", "percent-20") > length("4.0"));
  CHECK(limit("4.99", "percent-20") < length("4.0"));
  CHECK(limit("5.333333", "percent-25") <= length("4.0"));
  CHECK(limit("5.333334", "percent-25") > length("4.0"));
  CHECK(limit("4.00", "percent-25") == length("3.0"));
}

TEST_CASE("a reading of the rule that is not judged by says which places it would judge otherwise") {
  auto survey = sample::SurveyBuilder().zone("C", "6", "mill certificate", policy::Plating::bilge).row("PC", "C")
                    .marks("PC", {"5.0", "3.5", "3.1", "3.45"}).pit("P1", "PC", "1.4", "5.0", "1.6").criteria({"inland-rule"});
  const auto zone = sample::assessed(survey.made).zones[0];
  const auto places = [&](policy::RuleReading reading) {
    std::vector<std::string> found;
    for (const auto &one : zone.read_otherwise)
      if (one.reading.reading == reading)
        for (const auto &place : one.places) found.push_back(place.place);
    return found;
  };
  using Ids = std::vector<std::string>;
  // Judged by 3.225: PC 2, PC 4 meet (0.275, 0.225 in hand), PC 3 is too close, P1 leaves 3.4, too close under w 0.2327.
  CHECK(places(policy::RuleReading::floor_times_b) == Ids{"PC 3", "P1", "PC 4", "PC 2"}); // 3.75: all four fall short
  CHECK(places(policy::RuleReading::local_wear) == Ids{"P1"});                            // 3.0: PC 3 stays too close, P1 meets
  CHECK(places(policy::RuleReading::local_wear_under_floor) == Ids{"PC 3", "P1"});        // 2.9025: both meet
  const auto &first = zone.read_otherwise.front().places.front();
  CHECK(first.now == Verdict::too_close);
  CHECK(first.then == Verdict::falls_short);
  const nlohmann::json json = assess::json(survey.made, sample::assessed(survey.made));
  CHECK(json["zones"][0]["read_otherwise"][0]["reading"] == "floor-times-b");
  CHECK(json["zones"][0]["read_otherwise"][0]["limit"] == "3.75");
  CHECK(json["workings"]["inland-rule/bilge"]["read_otherwise"].size() == 3);
}
