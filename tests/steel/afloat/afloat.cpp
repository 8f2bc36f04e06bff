#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

#include "strakebook/steel/afloat/afloat.h"
#include "support/survey_builder.h"

using namespace strakebook;
using afloat::Lack;
using afloat::Trim;
using sample::decimal;
using sample::length;
using sample::station;
using sample::words;

namespace {

/// A box-like hull with nothing on her yet; densities of water are common practice, no source.
struct Boat {
  survey::Survey survey = sample::SurveyBuilder().made;
  policy::Policy policy = sample::house();
  works::Works works;

  Boat(const std::string &long_m, const std::string &beam_m, const std::string &coefficient, const std::string &water) {
    policy.afloat.waters = {{"fresh", decimal("1.000")}, {"salt", decimal("1.025")}};
    survey.vessel.length.length = station(long_m + " m");
    survey.vessel.beam.length = station(beam_m + " m");
    survey.afloat.water = words(water);
    survey.afloat.waterplane_coefficient = decimal(coefficient);
    survey.afloat.freeboard = survey::LengthFact{.length = station("0.450 m")};
    survey.afloat.downflooding = survey::LengthFact{.length = station("0.300 m")};
    survey.datum.towards = words("aft");
  }
  Boat &put(const std::string &id, std::optional<double> kg, std::optional<std::string> at = std::nullopt) {
    works::Item item{.id = id, .adds_steel = true, .net_kg = kg};
    if (at) item.centre = station(*at).value;
    works.items.push_back(item);
    return *this;
  }
  afloat::Afloat floated() const { return afloat::float_with(survey, {}, policy, works); }
};

Boat narrow_boat() { return {"17", "2.08", "0.90", "fresh"}; }

} // namespace

// 150 x 22 m, coefficient 0.82, salt water of 1.025 t/m3: 27.7 t/cm, a published worked example of tonnes per centimetre.
TEST_CASE("tonnes to the centimetre") {
  const auto found = Boat("150", "22", "0.82", "salt").floated();
  REQUIRE(found.hull);
  CHECK(found.hull->waterplane_m2 == Approx(2706));
  CHECK(found.hull->tpc == Approx(27.7365));
}

// 20 m2 of 6 mm plate at 7.85 kg per m2 and mm are 942 kg; hull 17 x 2.08 m, coefficient 0.9, fresh water. By hand:
// 942 / (1.000 x 17 x 2.08 x 0.9) = 942 / 31.824 = 29.600 mm.
TEST_CASE("942 kg sink a narrow boat by 2.960 cm") {
  const auto found = narrow_boat().put("S1", 20 * 6 * 7.85).floated();
  REQUIRE(found.steps.size() == 1);
  CHECK(found.steps[0].net_kg == Approx(942));
  CHECK(found.steps[0].sinkage_mm == Approx(29.600).margin(0.0005));
  CHECK(*found.steps[0].after.freeboard < length("420.401"));
  CHECK(*found.steps[0].after.freeboard > length("420.399"));
}

// Sides of 32.4 m2 in 4 mm weigh 1,017 kg (7.85 kg per m2 and mm); over a fresh-water waterplane of 33.7 m2 they sink her by
// 30 mm: a figure of the trade, common practice, no source.
TEST_CASE("new sides sink her by 30 mm") {
  const double kg = 32.4 * 4 * 7.85;
  CHECK(kg == Approx(1017).margin(0.5));
  const auto found = Boat("33.7", "1.00", "1", "fresh").put("S1", kg).floated();
  REQUIRE(found.steps.size() == 1);
  CHECK(found.hull->waterplane_m2 == Approx(33.7));
  CHECK(found.steps[0].sinkage_mm == Approx(30).margin(0.5));
}

TEST_CASE("items sink her one after the other, and all of them by their sum") {
  const auto found = narrow_boat().put("S1", 318.24).put("S2", 636.48).floated();
  REQUIRE(found.steps.size() == 2);
  CHECK(found.steps[0].sinkage_mm == Approx(10));
  CHECK(found.steps[1].sinkage_mm == Approx(20));
  CHECK(found.steps[1].sunk_mm == Approx(30));
  CHECK(*found.steps[1].after.freeboard == length("420"));
  CHECK(*found.steps[1].after.downflooding == length("270"));
  REQUIRE(found.all);
  CHECK(found.all->net_kg == Approx(954.72));
  CHECK(*found.all->after.freeboard == length("420"));
  CHECK(*afloat::lowest(found).downflooding == length("270"));
}

TEST_CASE("taking more off than goes on lets her rise") {
  const auto found = narrow_boat().put("S1", -318.24).floated();
  CHECK(*found.steps[0].after.freeboard == length("460"));
  CHECK(*afloat::lowest(found).freeboard == length("450"));
}

// A box of length L, beam B and draught T: trim = W x / MCT, with MCT = rho g L B T GM_L / L and GM_L taken as BM_L = L^2 / 12 T
// (moment of inertia of a rectangle, L^3 B / 12): 12 W x / (rho B L^2) over the length.
TEST_CASE("trim is that of a box, by the end that the weight lies towards") {
  auto boat = narrow_boat();
  const double box = 12 * 500.0 * 4.5 / (1.000 * 2.08 * 17 * 17);
  SECTION("stations count aft: 4 m is towards the bow") {
    const auto trim = boat.put("S1", 500, "4 m").floated().steps[0].trim;
    REQUIRE(trim);
    CHECK(trim->lever_m == Approx(4.5));
    CHECK(trim->signed_mm == Approx(box));
    CHECK(trim->by == Trim::By::bow);
  }
  SECTION("stations count forward: 4 m is towards the stern") {
    boat.survey.datum.towards = words("forward");
    CHECK(boat.put("S1", 500, "4 m").floated().steps[0].trim->by == Trim::By::stern);
  }
  SECTION("taken off towards the bow, she goes down by the stern") {
    const auto trim = boat.put("S1", -500, "4 m").floated().steps[0].trim;
    CHECK(trim->signed_mm == Approx(-box));
    CHECK(trim->by == Trim::By::stern);
  }
  SECTION("in the middle she stays level") { CHECK(boat.put("S1", 500, "8.5 m").floated().steps[0].trim->by == Trim::By::even); }
  SECTION("moments add up; opposite ones cancel") {
    const auto all = boat.put("S1", 500, "4 m").put("S2", 250, "17 m").floated().all;
    REQUIRE(all->trim);
    CHECK(all->trim->signed_mm == Approx(12 * (500 * 4.5 - 250 * 8.5) / (2.08 * 17 * 17)));
    CHECK(all->trim->by == Trim::By::bow);
  }
  SECTION("without a place there is no hint, and none of the whole") {
    const auto found = boat.put("S1", 500, "4 m").put("S2", 250).floated();
    CHECK_FALSE(found.steps[1].trim);
    CHECK_FALSE(found.all->trim);
  }
}

TEST_CASE("the waterline's length is taken where it is given") {
  auto boat = narrow_boat();
  CHECK_FALSE(boat.floated().hull->by_waterline);
  boat.survey.vessel.waterline_length = survey::LengthFact{.length = station("16.0 m")};
  CHECK(boat.floated().hull->waterplane_m2 == Approx(16 * 2.08 * 0.9));
  // the lever still counts from the middle of her whole length
  CHECK(boat.put("S1", 100, "8.5 m").floated().steps[0].trim->lever_m == Approx(0).margin(1e-9));
}

TEST_CASE("what is not given is named, and nothing is taken in its place") {
  auto boat = narrow_boat().put("S1", 500, "4 m");
  auto expected = Lack::water;
  SECTION("the water") { boat.survey.afloat.water = {}; }
  SECTION("a water that the house does not have") { boat.survey.afloat.water = words("sea"); }
  SECTION("the coefficient") {
    boat.survey.afloat.waterplane_coefficient.reset();
    expected = Lack::coefficient;
  }
  const auto found = boat.floated();
  CHECK(found.lacking == std::vector{expected});
  CHECK_FALSE(found.hull);
  CHECK(found.steps.empty());
  CHECK(afloat::quantities(found).empty());
}

TEST_CASE("without heights the sinkage stands by itself; an item without weight is named") {
  auto boat = narrow_boat().put("S1", 500, "4 m").put("S2", std::nullopt, "5 m");
  boat.survey.afloat.freeboard.reset();
  const auto found = boat.floated();
  CHECK(found.lacking == std::vector{Lack::freeboard});
  CHECK(found.unweighed == std::vector<std::string>{"S2"});
  CHECK(found.steel_added);
  REQUIRE(found.steps.size() == 1);
  CHECK_FALSE(found.steps[0].after.freeboard);
  CHECK(found.steps[0].after.downflooding);
}

TEST_CASE("each way to cover an area is floated by itself, from how she was found") {
  auto boat = narrow_boat().put("S1", 500, "4 m");
  const works::Option let_in{.area = "A1", .kind = works::Option::Kind::insert, .net_kg = 318.24, .centre = station("4 m").value};
  const works::Option laid_over{.area = "A1", .kind = works::Option::Kind::overplate, .net_kg = 636.48, .centre = station("4 m").value};
  boat.works.options = {let_in, laid_over};
  const auto found = boat.floated();
  REQUIRE(afloat::option_step(found, let_in));
  CHECK(*afloat::option_step(found, let_in)->after.freeboard == length("440"));
  CHECK(*afloat::option_step(found, laid_over)->after.freeboard == length("430"));
  const auto json = afloat::json(found);
  CHECK(json["steps"][1]["item"] == "all");
  CHECK(json["steps"][2]["item"] == "A1 insert");
  CHECK(json["steps"][3]["item"] == "A1 overplate");
  CHECK(json["steps"][3]["freeboard"].get<double>() == Approx(430));
}

TEST_CASE("a program reads heights as found as text, what is reckoned as numbers and what is absent as null") {
  auto boat = narrow_boat().put("S1", 318.24, "4 m");
  boat.survey.afloat.downflooding.reset();
  const auto json = afloat::json(boat.floated());
  CHECK(json["waterplane_m2"].get<double>() == Approx(31.824));
  CHECK(json["density"].get<double>() == Approx(1));
  CHECK(json["tpc_t_cm"].get<double>() == Approx(0.31824));
  CHECK(json["before"]["freeboard"] == "450.0");
  CHECK(json["before"]["downflooding"].is_null());
  CHECK(json["steps"][0]["item"] == "S1");
  CHECK(json["steps"][0]["sinkage_mm"].get<double>() == Approx(10));
  CHECK(json["steps"][0]["downflooding"].is_null());
  CHECK(json["steps"][0]["by"] == "bow");
  boat.survey.afloat.water = {};
  CHECK(afloat::json(boat.floated())["waterplane_m2"].get<double>() == Approx(31.824));
  CHECK(afloat::json(boat.floated())["density"].is_null());
  CHECK(afloat::json(boat.floated())["tpc_t_cm"].is_null());
}

TEST_CASE("every figure comes with its formula and what went in") {
  const auto found = narrow_boat().put("S1", 318.24, "4 m").put("S2", 318.24, "5 m").floated();
  const auto all = afloat::quantities(found);
  std::vector<std::string> formulas;
  for (const auto &one : all) formulas.push_back(one.of + " " + one.formula);
  CHECK(formulas == std::vector<std::string>{"hull waterplane", "hull tpc", "S1 sinkage", "S1 moment", "S1 trim-hint",
                                             "S1 freeboard-after", "S1 downflooding-after", "S2 sinkage", "S2 moment", "S2 trim-hint",
                                             "S2 freeboard-after", "S2 downflooding-after", "all sinkage", "all moment", "all trim-hint"});
  CHECK(all[10].formula == "freeboard-after");
  CHECK(all[10].inputs[0].from == "S1 freeboard");
  CHECK(all[10].inputs[0].value == Approx(440));
  CHECK(all[10].value == Approx(430));
}
