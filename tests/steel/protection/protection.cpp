#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "strakebook/steel/protection/protection.h"
#include "support/survey_builder.h"

using namespace strakebook;
using protection::Lack;
using sample::decimal;
using sample::length;
using sample::mm;
using sample::station;
using sample::words;

namespace {

survey::CoatingScheme scheme(const std::string &area, const std::string &film, const std::string &solids, const std::string &loss) {
  return {.id = "1", .area_m2 = decimal(area), .dry_film = mm(film), .solids_percent = decimal(solids), .loss_percent = decimal(loss)};
}

policy::Policy house() {
  policy::Policy policy = sample::house();
  policy.afloat.waters = {{"fresh", decimal("1.000")}, {"salt", decimal("1.025")}};
  // capacities and utilisation: DNV-RP-B401, those of zinc and magnesium from memory
  policy.protection.metals = {{"aluminium", {.capacity = decimal("2000"), .waters = {"salt"}}},
                              {"magnesium", {.capacity = decimal("1100"), .waters = {"fresh"}}}};
  policy.protection.utilisation = decimal("0.90");
  policy.protection.unworn_percent = decimal("5");
  policy.protection.unworn_months = 12;
  return policy;
}

struct Boat {
  survey::Survey survey = sample::SurveyBuilder().zone("W", "6").row("PW", "W").row("SW", "W").zone("B", "8").row("PB", "B").made;
  policy::Policy policy = house();
  Boat() {
    survey.vessel.beam.length = station("2.08 m");
    survey.rows[1].side = survey::Side::starboard;
    survey.zones[1].plating = policy::Plating::bottom;
    survey.afloat.water = words("fresh");
    survey.report.inspected = base::Located<base::Date>{{2026, 6, 2}, {}};
  }
  Boat &lay_over(const std::string &id, const std::string &row, const std::string &thickness) {
    survey.steelwork.push_back({.id = id, .action = "overplate", .at = {.rows = {row}}, .thickness = mm(thickness)});
    return *this;
  }
  survey::AnodePlan &plan() { return survey.coating.plan.emplace(); }
  survey::AnodesFitted &fitted(int year, int month, int day, const std::string &worn) {
    return survey.coating.fitted.emplace(
        survey::AnodesFitted{.on = base::Located<base::Date>{{year, month, day}, {}}, .worn_percent = decimal(worn)});
  }
  protection::Protection reckoned() const { return protection::reckon(survey, {}, policy); }
};

} // namespace

// Volume of paint: area x film / (10 x solids) / (1 - loss); common practice, no source. 100 m2 x 125 um / 650 = 19.230769 l.
TEST_CASE("100 m2 at 125 micrometres and 65 % solids take 19.231 litres") {
  Boat boat;
  boat.survey.coating.schemes = {scheme("100", "125 um", "65", "0")};
  CHECK(boat.reckoned().schemes[0].litres == Approx(19.230769));
}

// A published worked example: 9.310489 litres in theory and 30 % lost are 13.3 litres bought. The loss divides; multiplying by
// 1.3 would give 12.1.
TEST_CASE("what is lost divides: 9.310489 litres and 30 % are 13.3") {
  Boat boat;
  boat.survey.coating.schemes = {scheme("9.310489", "1000 um", "100", "30")};
  CHECK(boat.reckoned().schemes[0].litres == Approx(13.30070));
}

TEST_CASE("a scheme says what it does not give, and has no volume") {
  Boat boat;
  boat.survey.coating.schemes = {{.id = "1", .area_m2 = decimal("10")}, scheme("100", "125 um", "65", "0")};
  const auto found = boat.reckoned();
  CHECK_FALSE(found.schemes[0].litres);
  CHECK(found.schemes[0].lacking == std::vector{Lack::film, Lack::solids, Lack::loss});
  CHECK(found.schemes[1].lacking.empty());
}

// DNV-RP-B401: M = I t 8760 / (u e); 260.8 A over 25 years, aluminium of 2000 A h/kg, utilisation 0.90: 31 730.7 kg.
TEST_CASE("260.8 A over 25 years ask for 31 730.7 kg of aluminium") {
  Boat boat;
  boat.survey.afloat.water = words("salt");
  boat.plan() = {.metal = words("aluminium"), .area_m2 = decimal("2608"), .bare_percent = decimal("100"),
                 .current_ma_m2 = decimal("100"), .years = decimal("25"), .net_kg = decimal("200"), .stands_out = mm("150 mm")};
  const auto anodes = boat.reckoned().anodes;
  REQUIRE(anodes);
  CHECK(anodes->current_a == Approx(260.8));
  CHECK(anodes->mass_kg == Approx(31730.7).margin(0.05));
  CHECK(anodes->count == 159); // 158.65, rounded up
  CHECK(anodes->lacking.empty());
}

TEST_CASE("a count that comes out whole is not rounded up, however its decimals run") {
  Boat boat;
  // 100 m2 x 3 mA/m2 x 10 % = 0.03 A; x 1100 x 0.9 / 8760 years x 8760 = 0.03 kg, in anodes of 0.01 kg
  boat.policy.protection.metals["magnesium"].capacity = decimal("8760");
  boat.policy.protection.utilisation = decimal("1");
  boat.plan() = {.metal = words("magnesium"), .area_m2 = decimal("100"), .bare_percent = decimal("10"),
                 .current_ma_m2 = decimal("3"), .years = decimal("1"), .net_kg = decimal("0.01")};
  CHECK(boat.reckoned().anodes->count == 3);
  boat.survey.coating.plan->net_kg = decimal("0.009999999");
  CHECK(boat.reckoned().anodes->count == 4);
}

TEST_CASE("a plan gives as much as it can, and names what is missing") {
  Boat boat;
  boat.plan() = {.area_m2 = decimal("40"), .bare_percent = decimal("5"), .current_ma_m2 = decimal("30")};
  const auto anodes = boat.reckoned().anodes;
  CHECK(anodes->current_a == Approx(0.06));
  CHECK_FALSE(anodes->mass_kg);
  CHECK_FALSE(anodes->count);
  CHECK(anodes->lacking == std::vector{Lack::metal, Lack::years, Lack::net_mass, Lack::stands_out});
}

TEST_CASE("a metal suits the waters that the house gives it") {
  Boat boat;
  boat.plan().metal = words("magnesium");
  CHECK(boat.reckoned().planned->suits);
  boat.survey.coating.plan->metal = words("aluminium");
  CHECK_FALSE(boat.reckoned().planned->suits);
  boat.survey.afloat.water = words("salt");
  CHECK(boat.reckoned().planned->suits);
  boat.fitted(2025, 1, 1, "50").metal = words("magnesium");
  CHECK_FALSE(boat.reckoned().fitted->suits);
  boat.survey.coating.fitted->metal = words("not known");
  CHECK_FALSE(boat.reckoned().fitted);
  boat.survey.afloat.water = {};
  CHECK_FALSE(boat.reckoned().planned);
}

TEST_CASE("anodes and plates on her sides make her wider") {
  Boat boat;
  CHECK_FALSE(boat.reckoned().width);
  boat.plan().stands_out = mm("60 mm");
  CHECK(boat.reckoned().width->over_all() == length("2200"));
  boat.lay_over("S1", "PW", "5").lay_over("S2", "SW", "4").lay_over("S3", "SW", "6");
  const auto width = *boat.reckoned().width;
  CHECK(width.port == length("65"));
  CHECK(width.starboard == length("66")); // the thickest of two: they lie beside each other
  CHECK(width.over_all() == length("2211"));
  CHECK(width.items == std::vector<std::string>{"S1", "S2", "S3"});
}

TEST_CASE("plate under the bottom, or let in, makes her no wider") {
  Boat boat;
  boat.lay_over("S1", "PB", "8");
  CHECK_FALSE(boat.reckoned().width);
  boat.survey.steelwork.push_back({.id = "S2", .action = "insert", .at = {.rows = {"PW"}}, .thickness = mm("6")});
  CHECK_FALSE(boat.reckoned().width);
}

TEST_CASE("she has to be narrower than the narrowest place") {
  Boat boat;
  boat.plan().stands_out = mm("10 mm");
  CHECK_FALSE(boat.reckoned().width->too_wide());
  const auto lock_of = [&](const std::string &text) {
    boat.survey.vessel.narrowest = survey::LengthFact{.length = station(text)};
    return boat.reckoned().width->too_wide();
  };
  CHECK(lock_of("2.100 m"));
  CHECK(lock_of("2.099 m"));
  CHECK_FALSE(lock_of("2.100001 m"));
}

TEST_CASE("anodes that have not worn in so many months") {
  Boat boat;
  const auto unworn = [&](int year, int month, int day, const std::string &worn) {
    boat.fitted(year, month, day, worn);
    return boat.reckoned().worn->unworn;
  };
  CHECK(unworn(2025, 6, 2, "4.9")); // twelve months to the day
  CHECK_FALSE(unworn(2025, 6, 3, "4.9"));
  CHECK_FALSE(unworn(2025, 6, 1, "5"));
  boat.survey.coating.fitted->worn_percent.reset();
  CHECK_FALSE(boat.reckoned().worn);
}

TEST_CASE("a program reads what was reckoned, and null for what was not") {
  Boat boat;
  boat.survey.coating.schemes = {scheme("100", "125 um", "65", "0"), {.id = "2"}};
  auto json = protection::json(boat.reckoned());
  CHECK(json["schemes"][0]["litres"].get<double>() == Approx(19.230769));
  CHECK(json["schemes"][1]["litres"].is_null());
  CHECK(json["anodes"].is_null());
  CHECK(json["beam_over_all"].is_null());
  CHECK(json["unworn"].is_null());
  boat.plan().stands_out = mm("60 mm");
  boat.fitted(2025, 1, 1, "2");
  json = protection::json(boat.reckoned());
  CHECK(json["anodes"].is_null()); // its count is not reckoned
  CHECK(json["beam_over_all"] == "2200.0");
  CHECK(json["unworn"] == true);
}

TEST_CASE("litres, anodes and width come with their formula and what went in") {
  Boat boat;
  boat.survey.coating.schemes = {scheme("100", "125 um", "65", "30")};
  boat.plan() = {.metal = words("magnesium"), .area_m2 = decimal("40"), .bare_percent = decimal("5"),
                 .current_ma_m2 = decimal("30"), .years = decimal("4"), .net_kg = decimal("2.5"), .stands_out = mm("60 mm")};
  const auto all = protection::quantities(boat.reckoned());
  std::vector<std::string> formulas;
  for (const auto &one : all) formulas.push_back(one.of + " " + one.formula);
  CHECK(formulas == std::vector<std::string>{"scheme 1 paint-volume", "anodes anode-current", "anodes anode-mass", "anodes anode-count",
                                             "hull beam-over-all"});
  CHECK(all[0].inputs[3].value == Approx(0.30));
  CHECK(all[2].value == Approx(0.06 * 4 * 8760 / (0.9 * 1100)));
}
